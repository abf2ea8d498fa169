import { practice, word } from './word.ts';

export const cutting = [
	word('blank', 'A flat piece cut out for one part, before it is bent or trimmed.', 'p. 4-77'),
	word('trim', 'Metal left on a side to be taken off to the line later.', 'pp. 4-77, 4-79', [
		'trim allowance',
		'trimmed'
	]),
	word('kerf', 'The width of metal that a saw cut turns into chips.', practice),
	word('remnant', 'What is left of a bar or a sheet after its pieces are cut.', practice),
	word('shear', 'The machine that cuts a sheet between two blades, without a kerf.', 'p. 4-8', [
		'sheared'
	]),
	word('density', 'What a cubic inch of an alloy weighs, in pounds.', practice),
	word('alloy', 'Aluminum with other metals in it, called by a number such as 2024.', practice),
	word('clad', 'Sheet with a thin skin of pure aluminum against corrosion.', practice, ['bare']),
	word('tolerance', 'How far a size may be off and still be right.', practice)
] as const;
