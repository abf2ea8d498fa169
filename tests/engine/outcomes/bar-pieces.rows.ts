import type { OutcomeRow } from './outcome-row.ts';

/*
 * Every piece takes 3 1/16 in with its kerf; 36 1/16 divided by it is 11.8, so 11 pieces. They use
 * 33.6875 in and leave 2.3125 in. Without a kerf, 12 pieces of 3 in are the whole bar.
 */

const sawn = { bar: 36, piece: 3, kerf: 1 / 16 };
const even = { bar: 36, piece: 3, kerf: 0 };

export const rows: readonly OutcomeRow[] = [
	// 12 × 3.0625 less the last kerf is 36.6875.
	{
		given: sawn,
		key: 'count',
		entered: 12,
		case: 'over',
		says: '12 pieces and the cuts between them need 0.6875 in more bar than there is.'
	},
	{
		given: sawn,
		key: 'count',
		entered: 10,
		case: 'another',
		says: '10 pieces leave 5.375 in, enough for another piece.'
	},
	{
		given: sawn,
		key: 'count',
		entered: 11,
		case: 'most',
		says: '11 pieces leave 2.3125 in, too short for another piece.'
	},
	{
		given: even,
		key: 'count',
		entered: 12,
		case: 'whole',
		says: '12 pieces use up the whole bar.'
	},
	{
		given: sawn,
		key: 'remnant',
		entered: 2.3125,
		case: 'left',
		says: '2.3125 in is left after 11 pieces and their cuts.'
	},
	// Within 1/64 in on both sides.
	{
		given: sawn,
		key: 'remnant',
		entered: 2.328,
		case: 'left',
		says: '2.328 in is left after 11 pieces and their cuts.'
	},
	{
		given: sawn,
		key: 'remnant',
		entered: 2.297,
		case: 'left',
		says: '2.297 in is left after 11 pieces and their cuts.'
	},
	{
		given: sawn,
		key: 'remnant',
		entered: 3,
		case: 'more',
		says: '3.000 in is more than the saw leaves.'
	},
	{
		given: sawn,
		key: 'remnant',
		entered: 2,
		case: 'less',
		says: '2.000 in is less than the saw leaves.'
	}
];
