import type { OutcomeRow } from './outcome-row.ts';

/*
 * FAA-H-8083-31B, ch. 4, p. 4-32, Fig. 4-76. A 1/8 rivet: 1.5 D = 0.1875 across and 0.5 D = 0.0625 high;
 * between 1.25 D = 0.1563 and 1.66 D = 0.2075 across, between 0.33 D = 0.0413 and 0.66 D = 0.0825 high.
 */

const eighth = { D: 1 / 8 };

export const rows: readonly OutcomeRow[] = [
	{
		given: eighth,
		key: 'width',
		entered: 0.1875,
		case: 'aim',
		says: '0.1875 in is 1.5 D across, the size to aim for.'
	},
	{
		given: eighth,
		key: 'width',
		entered: 0.15,
		case: 'under',
		says: '0.150 in is 1.2 D across, under the minimum of 1.25 D.'
	},
	{
		given: eighth,
		key: 'width',
		entered: 0.25,
		case: 'over',
		says: '0.250 in is 2 D across, over the maximum of 1.66 D.'
	},
	{
		given: eighth,
		key: 'width',
		entered: 0.16,
		case: 'allowed',
		says: '0.160 in is 1.28 D across: allowed, but not the size to aim for.'
	},
	// On the limits, within 0.001 in.
	{
		given: eighth,
		key: 'width',
		entered: 0.2075,
		case: 'allowed',
		says: '0.2075 in is 1.66 D across: allowed, but not the size to aim for.'
	},
	{
		given: eighth,
		key: 'height',
		entered: 0.0625,
		case: 'aim',
		says: '0.0625 in is 0.5 D high, the size to aim for.'
	},
	{
		given: eighth,
		key: 'height',
		entered: 0.03,
		case: 'under',
		says: '0.030 in is 0.24 D high, under the minimum of 0.33 D.'
	},
	{
		given: eighth,
		key: 'height',
		entered: 0.1,
		case: 'over',
		says: '0.100 in is 0.8 D high, over the maximum of 0.66 D.'
	},
	{
		given: eighth,
		key: 'height',
		entered: 0.08,
		case: 'allowed',
		says: '0.080 in is 0.64 D high: allowed, but not the size to aim for.'
	}
];
