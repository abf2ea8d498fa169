import { practice, word } from './word.ts';

export const structure = [
	word(
		'panel',
		'A sheet with its stiffeners and doublers, riveted together as one part.',
		practice
	),
	word('skin', 'The sheet that covers an aircraft and carries part of its loads.', practice),
	word('frame', 'A ring or a hoop across the fuselage that keeps its shape.', practice),
	word('bulkhead', 'A frame that is closed by sheet, as at the end of a cabin.', practice),
	word('stringer', 'A long thin member that runs under the skin and stiffens it.', practice),
	word('stiffener', 'A small bent or extruded member that keeps a sheet from buckling.', practice),
	word('rib', 'A member across a wing that gives it its shape.', practice),
	word('spar', 'The main member along a wing; its caps carry the bending.', practice, [
		'spar cap',
		'cap'
	]),
	word('web', 'The flat sheet between two flanges of a spar, a rib or a channel.', practice),
	word('gusset', 'A small plate that joins members at a corner.', practice),
	word('hinge leaf', 'One half of a hinge, riveted to its part.', practice, ['leaf']),
	word(
		'shim',
		'A thin strip laid between two parts to take up room, or round a nose bar to make it blunter.',
		practice,
		['shimmed']
	),
	word(
		'snips',
		'Hand shears for sheet; they cut outside the line, and the edge is filed down to it.',
		practice
	),
	word('punch', 'A steel pin that drives a shank out of its hole.', practice, ['drift punch']),
	word('oversize', 'A hole or a rivet one step over what was there before.', practice),
	word(
		'nominal',
		'The size or weight a thing is called by; what is measured may be a little off it.',
		practice
	),
	word('annealed', 'Made soft by heat, as sheet of temper O.', practice),
	word('sandbag', 'A bag of sand that sheet is formed on with a mallet.', practice)
] as const;
