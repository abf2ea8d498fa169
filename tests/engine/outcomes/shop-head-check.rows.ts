import type { OutcomeRow } from './outcome-row.ts';

/*
 * A 1/8 in rivet: 0.15625 to 0.2075 in across and 0.04125 to 0.0825 in high are allowed
 * (FAA-H-8083-31B, p. 4-32, Fig. 4-76). Driven on, the head keeps its metal: its height falls as
 * the square of its width grows.
 */

type Line = readonly [judgement: string, told: string, says: string];

function head(width: number, height: number, lines: readonly Line[]): OutcomeRow[] {
	const given = { D: 1 / 8, width, height };
	return lines.map(([entered, told, says]) => ({
		given,
		key: 'judgement',
		entered,
		case: told,
		says
	}));
}

const forNothing =
	'Drilled out for nothing, and the hole may be damaged: the head is neither too wide nor too flat.';

export const rows: OutcomeRow[] = [
	// Within the limits: 1.44D by 0.52D, which spreads to 1.5D and 0.52 × 0.96².
	...head(0.18, 0.065, [
		['accept', 'left', 'Left as it is, 1.44D across and 0.52D high: within the limits.'],
		[
			'drive more',
			'drivenForNothing',
			'Driven on, it spreads and flattens to about 1.5D across and 0.48D high: that mends nothing here.'
		],
		['replace', 'drilledForNothing', forNothing]
	]),
	// Just under and over 1.45D: 1.448D goes to 1.5D, 1.456D a tenth wider.
	...head(0.181, 0.07, [
		[
			'drive more',
			'drivenForNothing',
			'Driven on, it spreads and flattens to about 1.5D across and 0.52D high: that mends nothing here.'
		]
	]),
	...head(0.182, 0.07, [
		[
			'drive more',
			'drivenForNothing',
			'Driven on, it spreads and flattens to about 1.6D across and 0.46D high: that mends nothing here.'
		]
	]),
	// Too narrow and too high: 1.12D by 0.88D; 0.88 × (1.12 / 1.5)² = 0.4906.
	...head(0.14, 0.11, [
		['accept', 'bad', 'Left as it is, 1.12D across and 0.88D high: outside the limits.'],
		[
			'drive more',
			'driven',
			'Driven on, it spreads and flattens to about 1.5D across and 0.49D high.'
		],
		['replace', 'drilledForNothing', forNothing]
	]),
	// Too wide and too flat: 1.84D by 0.24D.
	...head(0.23, 0.03, [
		['accept', 'bad', 'Left as it is, 1.84D across and 0.24D high: outside the limits.'],
		[
			'drive more',
			'drivenForNothing',
			'Driven on, it spreads and flattens to about 2.02D across and 0.2D high: that mends nothing here.'
		],
		[
			'replace',
			'fresh',
			'Drilled out and replaced, the head can be 1.5D across and 0.5D high, if the hole is not damaged.'
		]
	])
];
