import { rivetNumber } from '../../methods/rivet-number.ts';
import { lettersOf } from '../../trade/rivet-code.ts';
import { family } from '../family.ts';
import { looseRivetDrawing } from './parts/loose-rivet.ts';
import { solidRivet } from './parts/solid-rivets.ts';

const stories: readonly string[] = [
	'You fill in the parts list of a skin repair before the stores close.',
	'A drawer of the rivet cabinet has lost its label, and you write a new one.',
	'The work card names head, alloy and size; stores wants the rivet number.',
	'You measured a rivet from the kit and order a box more of the same.',
	'A repair sketch needs the rivet number beside the seam.'
];

export const tasks = family({
	method: rivetNumber,
	draw(random, level) {
		const { head, alloy, diameterDash, lengthDash } = solidRivet(random, level);
		return {
			given: { head, alloy, D: diameterDash / 32, length: lengthDash / 16 },
			story: random.pick(stories),
			question: 'What is the number of this rivet?',
			asked: ['number'],
			basis: 'Numbers begin with MS20, then head, alloy letters and the two dash numbers.',
			cautions: []
		};
	},
	figure: ({ head, alloy, D, length }, say) =>
		looseRivetDrawing(
			`A rivet with a ${head} head from the side and from above, with its diameter and length.`,
			{ head, D, length, letters: lettersOf(alloy) },
			{ D: say('D', D), length: say('length', length) }
		),
	metal: (seen, say) => {
		const size = { D: seen.at('thick'), length: seen.at('long') };
		const notes = { D: say('D', size.D), length: say('length', size.length) };
		const rivet = { ...size, head: seen.word('headCalled'), letters: seen.word('marked') };
		const other = { D: seen.beside('thick'), length: seen.beside('long') };
		return looseRivetDrawing(seen.says, rivet, notes, [other]);
	}
});
