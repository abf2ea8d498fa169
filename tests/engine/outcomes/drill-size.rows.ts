import type { OutcomeRow } from './outcome-row.ts';

/*
 * FAA-H-8083-31B, ch. 4, p. 4-18, Fig. 4-47: No. 30 is 0.1285 in; the next 64th up is 9/64.
 */

const thirty = { drill: 'No. 30' };

export const rows: readonly OutcomeRow[] = [
	{
		given: thirty,
		key: 'size',
		entered: 0.1285,
		case: 'drill',
		says: '0.1285 in: that is the No. 30 drill.'
	},
	{
		given: thirty,
		key: 'size',
		entered: 0.129,
		case: 'none',
		says: '0.129 in: no drill has that size.'
	},
	{
		given: thirty,
		key: 'fraction',
		entered: 9 / 64,
		case: 'drill',
		says: '9/64 in: that is the 9/64 drill.'
	}
];
