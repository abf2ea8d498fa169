import { forty, sixteen } from './diameter-rows.ts';
import type { OutcomeRow } from './outcome-row.ts';

export const rows: OutcomeRow[] = [
	...forty({ thickest: 0.04 }),
	...sixteen({ thickest: 0.016 }),
	{
		// Three times 0.063 is 0.189, so 7/32; 3/16 is 2.976 times, which is not told as three.
		given: { thickest: 0.063 },
		key: 'diameter',
		entered: 3 / 16,
		case: 'under',
		says: '3/16 in (−6) is only 2.97 times the thickest sheet: the rivets may shear before it tears.'
	}
];
