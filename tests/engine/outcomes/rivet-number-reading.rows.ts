import type { OutcomeRow } from './outcome-row.ts';

/*
 * FAA-H-8083-31B, ch. 4, p. 4-31, Fig. 4-75: 4 is 4/32 = 1/8, 5 is 5/16.
 */

const number = { number: 'MS20470AD4-5' };

export const rows: readonly OutcomeRow[] = [
	{
		given: number,
		key: 'diameter',
		entered: 1 / 8,
		case: 'sized',
		says: 'A rivet 1/8 in thick and 5/16 in long.'
	},
	{
		given: number,
		key: 'length',
		entered: 5 / 32,
		case: 'sized',
		says: 'A rivet 1/8 in thick and 5/32 in long.'
	}
];
