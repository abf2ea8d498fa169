import { rivetNumber } from '../../methods/rivet-number.ts';
import { lettersOf } from '../../trade/rivet-code.ts';
import { family } from '../family.ts';
import type { Level } from '../level.ts';
import type { Random } from '../random.ts';
import { looseRivetDrawing } from './parts/loose-rivet.ts';
import { type SolidRivet, solidRivet } from '../parts/solid-rivets.ts';

const stories: readonly string[] = [
	'You fill in the parts list of a repair before the stores close.',
	'A drawer of the rivet cabinet has lost its label, and you write a new one.',
	'The work card names head, alloy and size; stores wants the rivet number.',
	'You measured a rivet from the kit and order another box of them.',
	'A sketch needs the rivet number beside the seam.',
	'Rivets swept off the bench are sorted back by their sizes.',
	'The parts list of a kit is typed again, rivet by rivet.'
];

const asked = {
	1: ['diameterDash', 'lengthDash'],
	2: ['number'],
	3: ['headNumber', 'letters', 'number']
} as const satisfies Record<Level, readonly string[]>;

const questions: Readonly<Record<Level, string>> = {
	1: 'What are the dash numbers of this rivet?',
	2: 'What is the number of this rivet?',
	3: 'What are the head number and the alloy letters, and what is the whole rivet number?'
};

/** Longest half size, in sixteenths, and the thickest rivet it is made of, in 32nds: common practice. */
const longestHalf = 7.5;
const thickestHalf = 6;

/** Half sizes are made of short rivets, and marked so in the number. */
function lengthOf(random: Random, level: Level, rivet: SolidRivet): number {
	const { diameterDash, lengthDash } = rivet;
	return level === 3 && diameterDash <= thickestHalf && random.int(0, 2) === 0
		? random.int(diameterDash, Math.floor(longestHalf)) + 0.5
		: lengthDash;
}

export const tasks = family({
	method: rivetNumber,
	draw(random, level) {
		const rivet = solidRivet(random, level);
		const { head, alloy, diameterDash } = rivet;
		return {
			given: { head, alloy, D: diameterDash / 32, length: lengthOf(random, level, rivet) / 16 },
			story: random.pick(stories),
			question: questions[level],
			asked: asked[level],
			chief: {
				diameterDash: ['diameterIn16ths', 'lengthForDiameter'],
				lengthDash: ['lengthIn32nds', 'diameterForLength'],
				number: ['diameterIn16ths', 'lengthIn32nds', 'swapped']
			},
			basis:
				level === 1
					? 'The diameter counts 32nds of an inch, the length 16ths.'
					: 'Numbers begin with MS20, then head, alloy letters and the two dash numbers.',
			cautions: []
		};
	},
	figure: ({ head, alloy, D, length }, say, like) =>
		looseRivetDrawing(
			`A rivet with a ${head} head from the side and from above, with its diameter and length.`,
			{ head, D, length, letters: lettersOf(alloy) },
			{ D: say('D', D), length: say('length', length) },
			like ? [like] : []
		),
	metal: (seen, say) => {
		const size = { D: seen.at('thick'), length: seen.at('long') };
		const notes = { D: say('D', size.D), length: say('length', size.length) };
		const rivet = { ...size, head: seen.word('headCalled'), letters: seen.word('marked') };
		const other = { D: seen.beside('thick'), length: seen.beside('long') };
		return looseRivetDrawing(seen.says, rivet, notes, [other]);
	}
});
