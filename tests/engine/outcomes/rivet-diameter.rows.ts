import { eighty, forty, sixteen } from './diameter-rows.ts';
import type { OutcomeRow } from './outcome-row.ts';

export const rows: OutcomeRow[] = [
	...forty({ thickest: 0.04 }),
	...sixteen({ thickest: 0.016 }),
	...eighty({ thickest: 0.08 }),
	{
		// Three times 0.063 is 0.189, so 1/4, there being no 7/32; 3/16 is 2.976 times, which is not told as three.
		given: { thickest: 0.063 },
		key: 'diameter',
		entered: 3 / 16,
		case: 'range',
		says: '3/16 in (−6) is 2.97T, within 2.5T to 3T; this asks for the next size above 3T.'
	}
];
