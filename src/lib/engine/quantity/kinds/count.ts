import { measured } from './measured.ts';
import { plainNumbers } from './number.ts';

/** Whole numbers of things. */
export const count = measured({
	id: 'count',
	dimension: plainNumbers,
	noun: 'a whole number',
	hint: 'A whole number.',
	example: '12',
	places: [0, 4],
	whole: true,
	mistakes: { coarse: [], onTheWay: [] }
});

/** The dash number of a length, which may end in a half: 5, or 4.5. */
export const lengthDash = measured({
	id: 'length-dash',
	dimension: plainNumbers,
	noun: 'a dash number',
	hint: 'A whole number, or one with a half.',
	example: '5 or 4.5',
	places: [0, 1],
	mistakes: { coarse: [], onTheWay: [] }
});
