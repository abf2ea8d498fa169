import type { OutcomeRow } from './outcome-row.ts';

/*
 * FAA-H-8083-31B, ch. 4, p. 4-31, Fig. 4-75, and p. 4-33, Fig. 4-77: 470 universal, AD 2117, 32nds, 16ths.
 */

const rivet = { head: 'universal', alloy: '2117', D: 1 / 8, length: 5 / 16 };

export const rows: readonly OutcomeRow[] = [
	{
		given: rivet,
		key: 'number',
		entered: 'MS20470AD4-5',
		case: 'handedOut',
		says: 'MS20470AD4-5 is a universal head rivet of 2117, 1/8 in by 5/16 in.'
	},
	{
		given: rivet,
		key: 'number',
		entered: 'MS20426B5-4',
		case: 'handedOut',
		says: 'MS20426B5-4 is a countersunk head rivet of 5056, 5/32 in by 1/4 in.'
	}
];
