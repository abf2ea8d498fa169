import type { OutcomeRow } from './outcome-row.ts';

/*
 * Skin 0.032 and rib 0.040 in with a 1/8 in rivet: grip 0.072, shank 0.1875, needed 0.2595, taken
 * 5/16 in (FAA-H-8083-31B, Fig. 4-76). The hole is a No. 30, 0.1285 in (Fig. 4-90): filling it takes
 * 0.072 × (1.028² − 1) = 0.0041 in of the shank.
 */
const joint = { layers: [0.032, 0.04], D: 0.125 };

/** Grip 0.0625, needed exactly the stocked 1/4 in. */
const exact = { layers: [0.025, 0.0375], D: 0.125 };

const at = { given: joint, key: 'length' };

export const rows: OutcomeRow[] = [
	{
		...at,
		entered: -1,
		case: 'inside',
		says: '−1.000 in does not even come through the stack.'
	},
	{
		...at,
		entered: 1 / 16,
		case: 'inside',
		says: '1/16 in (−1) does not even come through the stack.'
	},
	{
		// Flush with the stack.
		...at,
		entered: 0.072,
		case: 'inside',
		says: '0.072 in does not even come through the stack.'
	},
	{
		// 0.053 / 0.125
		...at,
		entered: 1 / 8,
		case: 'stub',
		says: '1/8 in (−2) stands out 0.42D: too little for any head.'
	},
	{
		// The least head, 1.25² × 0.33 = 0.5156D of shank, is reached at 0.072 + 0.0041 + 0.0645.
		...at,
		entered: 0.1405,
		case: 'stub',
		says: '0.1405 in stands out 0.55D: too little for any head.'
	},
	{
		// (0.141 − 0.0761) / 0.125 = 0.519D of metal, over 2.25
		...at,
		entered: 0.141,
		case: 'short',
		says: '0.141 in stands out 0.55D where 1.5D is wanted: at full width the head is only 0.23D high.'
	},
	{
		// (0.1875 − 0.0761) / 0.125 = 0.891D of metal, over 2.25
		...at,
		entered: 3 / 16,
		case: 'short',
		says: '3/16 in (−3) stands out 0.92D where 1.5D is wanted: at full width the head is only 0.4D high.'
	},
	{
		// 0.495 × 2.25 = 1.114D of metal is reached at 0.0761 + 0.1392 = 0.2153.
		...at,
		entered: 0.215,
		case: 'short',
		says: '0.215 in stands out 1.14D where 1.5D is wanted: at full width the head is only 0.49D high.'
	},
	{
		...at,
		entered: 0.216,
		case: 'scant',
		says: '0.216 in leaves metal for a head, but stands out less than the 1.5D wanted.'
	},
	{
		...at,
		entered: 1 / 4,
		case: 'scant',
		says: '1/4 in (−4) leaves metal for a head, but stands out less than the 1.5D wanted.'
	},
	{
		...at,
		entered: 0.259,
		case: 'scant',
		says: '0.259 in leaves metal for a head, but stands out less than the 1.5D wanted.'
	},
	{
		// The length needed, taken as it is: 0.188 / 0.125.
		...at,
		entered: 0.26,
		case: 'unstocked',
		says: '0.260 in stands out 1.5D, enough for a head; this asks for the next full 1/16 in.'
	},
	{
		...at,
		entered: 0.311,
		case: 'unstocked',
		says: '0.311 in stands out 1.91D, enough for a head; this asks for the next full 1/16 in.'
	},
	{
		// 0.001 in under is accepted.
		...at,
		entered: 0.3115,
		case: 'full',
		says: '0.3115 in stands out 1.92D, enough for a full shop head.'
	},
	{
		// 0.2405 / 0.125
		...at,
		entered: 5 / 16,
		case: 'full',
		says: '5/16 in (−5) stands out 1.92D, enough for a full shop head.'
	},
	{
		...at,
		entered: 0.3135,
		case: 'full',
		says: '0.3135 in stands out 1.93D, enough for a full shop head.'
	},
	{
		...at,
		entered: 0.314,
		case: 'unstocked',
		says: '0.314 in stands out 1.94D, enough for a head; this asks for the next full 1/16 in.'
	},
	{
		...at,
		entered: 0.3215,
		case: 'unstocked',
		says: '0.3215 in stands out 2D, enough for a head; this asks for the next full 1/16 in.'
	},
	{
		// A 16th over the length needed.
		...at,
		entered: 0.322,
		case: 'bends',
		says: '0.322 in stands out 2D, a size or more too much: driven, the shank bends over.'
	},
	{
		...at,
		entered: 3 / 8,
		case: 'bends',
		says: '3/8 in (−6) stands out 2.42D, a size or more too much: driven, the shank bends over.'
	},
	{
		// Under the length needed, but accepted: 0.187 / 0.125.
		given: exact,
		key: 'length',
		entered: 0.2495,
		case: 'full',
		says: '0.2495 in stands out 1.5D, enough for a full shop head.'
	},
	{
		given: exact,
		key: 'length',
		entered: 0.2485,
		case: 'scant',
		says: '0.2485 in leaves metal for a head, but stands out less than the 1.5D wanted.'
	},
	{
		given: exact,
		key: 'length',
		entered: 5 / 16,
		case: 'bends',
		says: '5/16 in (−5) stands out 2D, a size or more too much: driven, the shank bends over.'
	}
];
