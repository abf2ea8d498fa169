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
