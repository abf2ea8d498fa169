import type { OutcomeRow } from './outcome-row.ts';

/*
 * FAA-H-8083-31B, ch. 4, pp. 4-32 and 4-33: three times the thickest sheet, 0.120 for 0.040, so 1/8; under
 * 2.5 times the rivets may shear first; never under 3/32 where a part carries stress.
 */

const stack = { layers: [0.032, 0.04] };
const thick = { layers: [0.063, 0.04] };

export const rows: readonly OutcomeRow[] = [
	{
		given: stack,
		key: 'diameter',
		entered: 1 / 8,
		case: 'right',
		says: '1/8 in (−4) is 3.13 times the thickest sheet, the smallest rivet for this joint.'
	},
	{
		given: stack,
		key: 'diameter',
		entered: 0.12,
		case: 'unstocked',
		says: '0.120 in is no rivet size.'
	},
	{
		given: stack,
		key: 'diameter',
		entered: 0,
		case: 'unstocked',
		says: '0 in is no rivet size.'
	},
	{
		given: stack,
		key: 'diameter',
		entered: 1 / 16,
		case: 'small',
		says: '1/16 in (−2) is too small for a part that carries stress.'
	},
	// 0.09375 / 0.04 = 2.34, under 2.5.
	{
		given: stack,
		key: 'diameter',
		entered: 3 / 32,
		case: 'shears',
		says: '3/32 in (−3) is only 2.34 times the thickest sheet: the rivets may shear before the sheet tears.'
	},
	// 3 × 0.063 = 0.189, so 7/32; 3/16 is 2.98 times.
	{
		given: thick,
		key: 'diameter',
		entered: 3 / 16,
		case: 'under',
		says: '3/16 in (−6) is only 2.98 times the thickest sheet, less than the rule asks for.'
	},
	{
		given: stack,
		key: 'diameter',
		entered: 5 / 32,
		case: 'over',
		says: '5/32 in (−5) is 3.91 times the thickest sheet: a larger hole than the joint needs.'
	}
];
