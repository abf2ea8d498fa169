import { rulesOf } from '../rule.ts';
import { down, number, off, up } from '../typed.ts';

interface Given {
	readonly sheetLength: number;
	readonly sheetWidth: number;
	readonly pieceLength: number;
	readonly pieceWidth: number;
	readonly kerf: number;
}

interface Right {
	readonly alongLength: number;
	readonly acrossWidth: number;
	readonly lengthwise: number;
	readonly turnedAlong: number;
	readonly turnedAcross: number;
	readonly crosswise: number;
	readonly count: number;
}

const { common, rare } = rulesOf<Given, Right>('pieces-per-sheet');

const whole = (value: number): number => down(value, 1);

/** How many fit in a row; the last cut needs no kerf where the sheet ends there. */
const fit = (sheet: number, piece: number, kerf: number): number =>
	whole((sheet + kerf) / (piece + kerf));

const along = ({ sheetLength, pieceLength, kerf }: Given): number =>
	fit(sheetLength, pieceLength, kerf);
const across = ({ sheetWidth, pieceWidth, kerf }: Given): number =>
	fit(sheetWidth, pieceWidth, kerf);
const turned = ({ sheetLength, sheetWidth, pieceLength, pieceWidth, kerf }: Given): number =>
	fit(sheetLength, pieceWidth, kerf) * fit(sheetWidth, pieceLength, kerf);
const straight = (given: Given): number => along(given) * across(given);

const area = ({ sheetLength, sheetWidth, pieceLength, pieceWidth }: Given): number =>
	(sheetLength * sheetWidth) / (pieceLength * pieceWidth);

export const rules = [
	common(
		'lengthwise',
		'the areas divided',
		(given, { lengthwise }) => off(whole(area(given)), lengthwise, number),
		'area'
	),
	common(
		'lengthwise',
		'the areas divided, with its decimals',
		(given, { lengthwise }) => off(area(given), lengthwise, (value) => value.toFixed(1)),
		'area'
	),
	rare(
		'lengthwise',
		'the areas divided, rounded up',
		(given, { lengthwise }) => off(up(area(given), 1), lengthwise, number),
		'area',
		'areaUp'
	),
	common(
		'lengthwise',
		'the kerf forgotten',
		(given, { lengthwise }) => off(straight({ ...given, kerf: 0 }), lengthwise, number),
		'noKerfAlong',
		'noKerfAcross',
		'noKerfAcross+noKerfAlong'
	),
	common(
		'lengthwise',
		'turned a quarter',
		(given, { lengthwise }) => off(turned(given), lengthwise, number),
		'turned'
	),
	common(
		'lengthwise',
		'turned a quarter, and the kerf forgotten',
		(given, { lengthwise }) => off(turned({ ...given, kerf: 0 }), lengthwise, number),
		'turnedNoKerf'
	),
	common(
		'lengthwise',
		'part of a blank counted: rounded up each way',
		(given, right) =>
			off(
				up(given.sheetLength / given.pieceLength, 1) * up(given.sheetWidth / given.pieceWidth, 1),
				right.lengthwise,
				number
			),
		'upAlong',
		'upAcross',
		'upAcross+upAlong',
		'upBoth',
		'nearestAlong',
		'nearestAcross',
		'nearestAcross+nearestAlong'
	),
	common(
		'lengthwise',
		'rounded to the nearest each way',
		(given, { lengthwise }) =>
			off(
				Math.round(given.sheetLength / given.pieceLength) *
					Math.round(given.sheetWidth / given.pieceWidth),
				lengthwise,
				number
			),
		'upAlong',
		'upAcross',
		'upAcross+upAlong',
		'upBoth',
		'nearestAlong',
		'nearestAcross',
		'nearestAcross+nearestAlong'
	),
	common(
		'lengthwise',
		'both ways multiplied first, then rounded down',
		(given, { lengthwise }) =>
			off(
				whole(
					(given.sheetLength / (given.pieceLength + given.kerf)) *
						(given.sheetWidth / (given.pieceWidth + given.kerf))
				),
				lengthwise,
				number
			),
		'roundedLast'
	),
	common(
		'lengthwise',
		'one row only: along the sheet',
		(given, { lengthwise }) => off(along(given), lengthwise, number),
		'other-step:alongLength'
	),
	rare(
		'lengthwise',
		'one row only: across the sheet',
		(given, { lengthwise }) => off(across(given), lengthwise, number),
		'other-step:acrossWidth'
	),
	rare(
		'lengthwise',
		'rows added, not multiplied',
		(given, { lengthwise }) => off(along(given) + across(given), lengthwise, number),
		'addedUp'
	),
	rare(
		'lengthwise',
		'cuts counted, not blanks',
		(given, { lengthwise }) => off((along(given) - 1) * (across(given) - 1), lengthwise, number),
		'cutsCounted'
	),
	common(
		'lengthwise',
		'the kerf along the sheet only',
		(given, { lengthwise }) =>
			off(along(given) * across({ ...given, kerf: 0 }), lengthwise, number),
		'noKerfAcross'
	),
	rare(
		'lengthwise',
		'one row more squeezed in',
		(given, { lengthwise }) => off(along(given) * (across(given) + 1), lengthwise, number),
		'upAcross',
		'nearestAcross'
	),
	rare('lengthwise', 'a slip of one in the product', (_, { lengthwise }) => number(lengthwise - 1)),
	rare('lengthwise', 'a 48 by 120 sheet taken for one of 48 by 96', (given, { lengthwise }) =>
		given.sheetLength === 120
			? off(straight({ ...given, sheetLength: 96 }), lengthwise, number)
			: null
	),
	common(
		'count',
		'one way only looked at: along the sheet',
		(given, { count }) => off(straight(given), count, number),
		'alongOnly',
		'other-step:lengthwise'
	),
	common(
		'count',
		'one way only looked at: turned',
		(given, { count }) => off(turned(given), count, number),
		'other-step:crosswise',
		'acrossOnly',
		'turned'
	),
	common(
		'count',
		'the areas divided',
		(given, { count }) => off(whole(area(given)), count, number),
		'area'
	),
	common(
		'count',
		'the areas divided, with its decimals',
		(given, { count }) => off(area(given), count, (value) => value.toFixed(1)),
		'area'
	),
	rare(
		'count',
		'the areas divided, rounded up',
		(given, { count }) => off(up(area(given), 1), count, number),
		'area',
		'areaUp'
	),
	rare(
		'count',
		'both ways added',
		(given, { count }) => off(straight(given) + turned(given), count, number),
		'bothWays'
	),
	common(
		'count',
		'part of a blank counted: rounded up each way',
		(given, { count }) =>
			off(
				up(given.sheetLength / given.pieceLength, 1) * up(given.sheetWidth / given.pieceWidth, 1),
				count,
				number
			),
		'upAlong',
		'upAcross',
		'upAcross+upAlong',
		'upBoth',
		'nearestAlong',
		'nearestAcross',
		'nearestAcross+nearestAlong'
	),
	common(
		'count',
		'rounded to the nearest each way',
		(given, { count }) =>
			off(
				Math.round(given.sheetLength / given.pieceLength) *
					Math.round(given.sheetWidth / given.pieceWidth),
				count,
				number
			),
		'upAlong',
		'upAcross',
		'upAcross+upAlong',
		'upBoth',
		'nearestAlong',
		'nearestAcross',
		'nearestAcross+nearestAlong'
	),
	common(
		'count',
		'one row only',
		(given, { count }) => off(along(given), count, number),
		'other-step:alongLength'
	),
	rare(
		'count',
		'rows added, not multiplied',
		(given, { count }) => off(along(given) + across(given), count, number),
		'addedUp',
		'addedUp+alongOnly',
		'rowsAdded'
	),
	common('count', 'strips filled both ways: mixed layout', (given, { count }) => {
		const strip = given.sheetWidth - across(given) * given.pieceWidth;
		return off(straight(given) + turned({ ...given, sheetWidth: strip }), count, number);
	}),
	rare('count', 'long rows with short rows: the best of each', (given, { count }) =>
		off(
			fit(given.sheetLength, given.pieceWidth, 0) * fit(given.sheetWidth, given.pieceWidth, 0),
			count,
			number
		)
	),
	rare('count', 'the wrong side twice: length against both', (given, { count }) =>
		off(
			fit(given.sheetLength, given.pieceLength, 0) * fit(given.sheetWidth, given.pieceLength, 0),
			count,
			number
		)
	),
	rare('count', 'one short: a slip in the product', (_, { count }) => number(count - 1)),
	rare(
		'count',
		'cuts counted, not blanks',
		(given, { count }) => off((along(given) - 1) * (across(given) - 1), count, number),
		'cutsCounted',
		'cutsForBlanks'
	)
];
