import type { OutcomeRow } from './outcome-row.ts';

/*
 * A 1/8 rivet driven to 0.15 × 0.1: 1.2 D by 0.8 D. Driven on to 1.5 D the metal stays, so the height
 * goes down by (1.2 / 1.5)² = 0.64, to 0.512 D. One of 0.2 × 0.05, 1.6 D by 0.4 D, spreads by a tenth, to
 * 1.76 D, and goes down by 1 / 1.21, to 0.33 D (common practice).
 */

const narrow = { D: 1 / 8, width: 0.15, height: 0.1 };
const wide = { D: 1 / 8, width: 0.2, height: 0.05 };

export const rows: readonly OutcomeRow[] = [
	{
		given: narrow,
		key: 'judgement',
		entered: 'drive more',
		case: 'driven',
		says: 'Driven on, it spreads and flattens to 1.5 D across and 0.51 D high.'
	},
	{
		given: wide,
		key: 'judgement',
		entered: 'drive more',
		case: 'driven',
		says: 'Driven on, it spreads and flattens to 1.76 D across and 0.33 D high.'
	},
	{
		given: narrow,
		key: 'judgement',
		entered: 'accept',
		case: 'left',
		says: 'Left as it is: 1.2 D across and 0.8 D high.'
	},
	{
		given: narrow,
		key: 'judgement',
		entered: 'replace',
		case: 'fresh',
		says: 'Drilled out and driven new: 1.5 D across and 0.5 D high, if the hole was not hurt.'
	}
];
