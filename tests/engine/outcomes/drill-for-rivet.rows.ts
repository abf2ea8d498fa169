import type { OutcomeRow } from './outcome-row.ts';

/*
 * FAA-H-8083-31B, ch. 4, p. 4-39, Fig. 4-90: a 1/8 rivet takes the No. 30 drill, 0.1285 in, so 0.0035 in
 * of clearance. Over 0.06D, 0.0075 in, counts as loose (common practice).
 */

const eighth = { D: 1 / 8 };

export const rows: readonly OutcomeRow[] = [
	{
		given: eighth,
		key: 'final',
		entered: 0.1285,
		case: 'fits',
		says: 'The No. 30 (0.1285 in) drill leaves 0.0035 in of clearance: the rivet goes in easily and fills the hole.'
	},
	{
		given: eighth,
		key: 'final',
		entered: 0.125,
		case: 'binds',
		says: 'The 1/8 in (0.125 in) drill has the size of the shank itself: the rivet binds.'
	},
	{
		given: eighth,
		key: 'final',
		entered: 0.12,
		case: 'small',
		says: 'The No. 31 (0.120 in) drill is 0.005 in under the shank: the rivet does not go in.'
	},
	{
		given: eighth,
		key: 'final',
		entered: 0.136,
		case: 'loose',
		says: 'The No. 29 (0.136 in) drill leaves 0.011 in of clearance, so loose that the shank bends before it fills the hole.'
	},
	{
		given: eighth,
		key: 'final',
		entered: 0.13,
		case: 'other',
		says: 'The 0.130 in drill leaves 0.005 in of clearance; the one listed leaves 0.0035 in.'
	}
];
