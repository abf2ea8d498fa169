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

/** A number in a rivet's part number. */
const partOfNumber = {
	dimension: plainNumbers,
	mistakes: { coarse: [], onTheWay: [] }
} as const;

/** The dash number of a length, which may end in a half: 5, or 4.5. */
export const lengthDash = measured({
	...partOfNumber,
	id: 'length-dash',
	noun: 'a dash number',
	hint: 'A whole number, or one with a half.',
	example: '5 or 4.5',
	places: [0, 1],
	names: { reading: ({ dashNumbers }) => dashNumbers({ is: 'length', perInch: 16, halves: true }) }
});

/** The dash number of a diameter. */
export const diameterDash = measured({
	...partOfNumber,
	id: 'diameter-dash',
	noun: 'a dash number',
	hint: 'A whole number.',
	example: '4',
	places: [0, 4],
	whole: true,
	names: {
		reading: ({ dashNumbers }) => dashNumbers({ is: 'diameter', perInch: 32, halves: false })
	}
});

/** The number of a head standard: 470. */
export const headNumber = measured({
	...partOfNumber,
	id: 'head-number',
	noun: 'a head number',
	hint: 'A whole number.',
	example: '470',
	places: [0, 4],
	whole: true,
	names: { reading: ({ headNumbers }) => headNumbers }
});
