import type { OutcomeRow } from './outcome-row.ts';

/*
 * A 96 × 48 sheet holds 9 × 6 = 54 blanks of 10 × 7 along it, and 13 × 4 = 52 turned a quarter.
 */

const sheet = { sheetLength: 96, sheetWidth: 48, pieceLength: 10, pieceWidth: 7, kerf: 0 };

export const rows: readonly OutcomeRow[] = [
	{
		given: sheet,
		key: 'lengthwise',
		entered: 60,
		case: 'over',
		says: '60 blanks laid along the sheet: more than the sheet holds this way.'
	},
	{
		given: sheet,
		key: 'lengthwise',
		entered: 50,
		case: 'room',
		says: '50 blanks laid along the sheet: there is room for more.'
	},
	{
		given: sheet,
		key: 'lengthwise',
		entered: 54,
		case: 'full',
		says: '54 blanks laid along the sheet: it holds no more this way.'
	},
	{
		given: sheet,
		key: 'count',
		entered: 54,
		case: 'full',
		says: '54 blanks laid along the sheet: it holds no more this way.'
	},
	{
		given: sheet,
		key: 'count',
		entered: 52,
		case: 'turned',
		says: '52 blanks laid across the sheet: laid the other way, more come out.'
	},
	{
		given: sheet,
		key: 'count',
		entered: 60,
		case: 'over',
		says: '60 blanks laid along the sheet: more than the sheet holds this way.'
	},
	{
		given: sheet,
		key: 'count',
		entered: 50,
		case: 'room',
		says: '50 blanks laid along the sheet: there is room for more.'
	}
];
