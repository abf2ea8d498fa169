import type { OutcomeRow } from './outcome-row.ts';

/*
 * FAA-H-8083-31B, ch. 4, p. 4-32, Fig. 4-76. Stack 0.063 with a 1/8 rivet: 0.063 + 0.1875 = 0.2505 is
 * needed, so 5/16.
 */

const pair = { layers: [0.031, 0.032], D: 1 / 8 };

export const rows: readonly OutcomeRow[] = [
	// (0.3125 - 0.063) / 0.125 = 1.996.
	{
		given: pair,
		key: 'length',
		entered: 5 / 16,
		case: 'full',
		says: '5/16 in (−5) stands out 2 D, enough for a full shop head.'
	},
	{
		given: pair,
		key: 'length',
		entered: 0.063,
		case: 'inside',
		says: '0.063 in does not even come through the stack.'
	},
	// (0.125 - 0.063) / 0.125 = 0.496; a hair over half a diameter is driven.
	{
		given: pair,
		key: 'length',
		entered: 1 / 8,
		case: 'stub',
		says: '1/8 in (−2) stands out 0.5 D, too little for any head.'
	},
	// (0.25 - 0.063) / 0.125 = 1.496; the hole takes 0.504 × ((0.1285 / 0.125)² - 1) = 0.029; the rest over 1.5² is 0.652.
	{
		given: pair,
		key: 'length',
		entered: 1 / 4,
		case: 'short',
		says: '1/4 in (−4) stands out 1.5 D where 1.5 D is wanted: at full width the head is only 0.65 D high.'
	},
	// (0.1875 - 0.063) / 0.125 = 0.996; (0.996 - 0.029) / 2.25 = 0.43.
	{
		given: pair,
		key: 'length',
		entered: 3 / 16,
		case: 'short',
		says: '3/16 in (−3) stands out 1 D where 1.5 D is wanted: at full width the head is only 0.43 D high.'
	},
	// Long enough, under a size more, and not in any bin.
	{
		given: pair,
		key: 'length',
		entered: 0.28,
		case: 'unstocked',
		says: '0.280 in stands out 1.74 D, enough for a head, but lengths step by 1/16 in: the next one is 5/16 in (−5).'
	},
	// From 0.2505 + 1/16 = 0.313 on.
	{
		given: pair,
		key: 'length',
		entered: 3 / 8,
		case: 'bends',
		says: '3/8 in (−6) stands out 2.5 D, a size or more too much: driven, the shank bends over.'
	}
];
