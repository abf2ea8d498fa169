import { behind, rulesOf, type Typed } from '../rule.ts';
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
const fit = (sheet: number, piece: number, kerf: number, to = whole): number =>
	to((sheet + kerf) / (piece + kerf));

/** Blanks along and across the sheet. */
type Rows = readonly [along: number, across: number];
type Work = (given: Given) => Rows;

const counted =
	(to = whole): Work =>
	({ sheetLength, sheetWidth, pieceLength, pieceWidth, kerf }) => [
		fit(sheetLength, pieceLength, kerf, to),
		fit(sheetWidth, pieceWidth, kerf, to)
	];
const rows = counted();
const turnedRound = (given: Given): Given => ({
	...given,
	pieceLength: given.pieceWidth,
	pieceWidth: given.pieceLength
});
const noKerf = (given: Given): Given => ({ ...given, kerf: 0 });
const roundedUp = counted((value) => up(value, 1));
const nearest = counted(Math.round);

const area = ({ sheetLength, sheetWidth, pieceLength, pieceWidth }: Given): number =>
	(sheetLength * sheetWidth) / (pieceLength * pieceWidth);

const product = ([along, across]: Rows): number => along * across;

/** The blanks along the sheet and in all, where they differ from the right ones. */
function laid([along, across]: Rows, right: Right): Typed | null {
	if (off(along * across, right.lengthwise) === null) return null;
	return { alongLength: number(along), lengthwise: number(along * across) };
}

/** The blanks either way, and the better of them. */
function ways(lengthwise: number, crosswise: number, right: Right): Typed | null {
	const count = Math.max(lengthwise, crosswise);
	if (off(lengthwise, right.lengthwise) === null && off(crosswise, right.crosswise) === null)
		return null;
	return { lengthwise: number(lengthwise), crosswise: number(crosswise), count: number(count) };
}

/** Either way worked in the same wrong way. */
const bothWays = (work: (given: Given) => number, given: Given, right: Right): Typed | null =>
	ways(work(given), work(turnedRound(given)), right);

const noKerfs = [
	'noKerfAlong',
	'noKerfAcross',
	'noKerfAcross+noKerfAlong',
	'noKerfTurnedAlong',
	'noKerfTurnedAcross'
];
const ups = [
	'upAlong',
	'upAcross',
	'upBoth',
	'nearestAlong',
	'nearestAcross',
	'nearestAcross+nearestAlong',
	'upAcross+upAlong',
	'upTurnedAlong',
	'upTurnedAcross',
	'nearestTurnedAlong',
	'nearestTurnedAcross',
	'nearestTurnedAcross+nearestTurnedAlong',
	'upTurnedAcross+upTurnedAlong'
];

const written = [
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
		'area',
		'areaUp'
	),
	rare(
		'lengthwise',
		'the areas divided, rounded up',
		(given, { lengthwise }) => off(up(area(given), 1), lengthwise, number),
		'area',
		'areaUp'
	),
	common(
		'alongLength',
		'the kerf forgotten',
		(given, right) => laid(rows(noKerf(given)), right),
		...noKerfs
	),
	common(
		'alongLength',
		'the kerf along the sheet only',
		(given, right) => laid([rows(given)[0], rows(noKerf(given))[1]], right),
		'noKerfAcross'
	),
	common(
		'alongLength',
		'the kerf across the sheet only',
		(given, right) => laid([rows(noKerf(given))[0], rows(given)[1]], right),
		'noKerfAlong'
	),
	common(
		'alongLength',
		'turned a quarter',
		(given, right) => laid(rows(turnedRound(given)), right),
		'turned',
		'widthsAlong'
	),
	common(
		'alongLength',
		'turned a quarter, and the kerf forgotten',
		(given, right) => laid(rows(noKerf(turnedRound(given))), right),
		'turnedNoKerf',
		'turned',
		'widthsAlong',
		'widthsAlongNoKerf'
	),
	common(
		'alongLength',
		'part of a blank counted: rounded up each way',
		(given, right) => laid(roundedUp(given), right),
		...ups
	),
	common(
		'alongLength',
		'rounded to the nearest each way',
		(given, right) => laid(nearest(given), right),
		...ups
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
		'roundedLast',
		({ kerf }) => (kerf === 0 ? 'area' : '')
	),
	common(
		'lengthwise',
		'one row only: along the sheet',
		(given, { lengthwise }) => off(rows(given)[0], lengthwise, number),
		'other-step:alongLength'
	),
	rare(
		'lengthwise',
		'one row only: across the sheet',
		(given, { lengthwise }) => off(rows(given)[1], lengthwise, number),
		'other-step:acrossWidth'
	),
	rare(
		'lengthwise',
		'rows added, not multiplied',
		(_, { alongLength, acrossWidth, lengthwise }) =>
			off(alongLength + acrossWidth, lengthwise, number),
		'addedUp'
	),
	rare(
		'alongLength',
		'cuts counted, not blanks',
		(_, right) => laid([right.alongLength - 1, right.acrossWidth - 1], right),
		'cutsCounted',
		'cutsAlong'
	),
	rare(
		'alongLength',
		'one too few along the sheet',
		(_, right) => laid([right.alongLength - 1, right.acrossWidth], right),
		'cutsAlong'
	),
	rare(
		'alongLength',
		'one more row squeezed in',
		(given, right) => laid([rows(given)[0], rows(given)[1] + 1], right),
		'upAcross',
		'nearestAcross'
	),
	rare('lengthwise', 'a slip of one in the product', (_, { lengthwise }) => number(lengthwise - 1)),
	rare('alongLength', 'a 48 by 120 sheet taken for one of 48 by 96', (given, right) =>
		given.sheetLength === 120 ? laid(rows({ ...given, sheetLength: 96 }), right) : null
	),
	common(
		'count',
		'both ways right, and the lesser taken',
		(_, { lengthwise, crosswise, count }) => off(Math.min(lengthwise, crosswise), count, number),
		'other-step:lengthwise',
		'other-step:crosswise',
		'alongOnly',
		'acrossOnly'
	),
	rare(
		'count',
		'both ways added',
		(_, { lengthwise, crosswise, count }) => off(lengthwise + crosswise, count, number),
		'bothWays'
	),
	rare('count', 'one short: a slip in the product', (_, { count }) => number(count - 1)),
	common('count', 'strips filled both ways: mixed layout', (given, { count }) => {
		const strip = given.sheetWidth - rows(given)[1] * given.pieceWidth;
		const more = product(rows(turnedRound({ ...given, sheetWidth: strip })));
		return off(product(rows(given)) + more, count, number);
	}),
	common(
		'crosswise',
		'the areas divided, whichever way the blanks lie',
		(given, right) => ways(whole(area(given)), whole(area(given)), right),
		'area',
		'areaTurned'
	),
	common(
		'crosswise',
		'the kerf forgotten, both ways',
		(given, right) => bothWays((one) => product(rows(noKerf(one))), given, right),
		...noKerfs
	),
	common(
		'crosswise',
		'the kerf forgotten in one direction',
		(given, right) => bothWays((one) => rows(one)[0] * rows(noKerf(one))[1], given, right),
		...noKerfs
	),
	common(
		'crosswise',
		'rounded up, both ways',
		(given, right) => bothWays((one) => product(roundedUp(one)), given, right),
		...ups,
		'upBothTurned'
	),
	rare(
		'crosswise',
		'rounded to the nearest, both ways',
		(given, right) => bothWays((one) => product(nearest(one)), given, right),
		...ups,
		'upBothTurned'
	),
	rare(
		'crosswise',
		'the two ways each in the field of the other',
		(_, { lengthwise, crosswise, count }) =>
			lengthwise === crosswise
				? null
				: { lengthwise: number(crosswise), crosswise: number(lengthwise), count: number(count) },
		'other-step:lengthwise',
		'other-step:crosswise',
		'turned'
	),
	rare(
		'crosswise',
		'rows added, not multiplied, both ways',
		(given, right) => bothWays((one) => rows(one)[0] + rows(one)[1], given, right),
		'addedUp',
		'addedTurned'
	),
	rare(
		'crosswise',
		'cuts counted, not blanks, both ways',
		(given, right) => bothWays((one) => (rows(one)[0] - 1) * (rows(one)[1] - 1), given, right),
		'cutsCounted',
		'cutsTurned'
	),
	rare(
		'crosswise',
		'the same number of blanks either way',
		(_, right) => ways(right.lengthwise, right.lengthwise, right),
		'other-step:lengthwise',
		'notTurned'
	)
];

export const rules = behind<Right>(
	'count',
	({ lengthwise, crosswise }) => ({
		lengthwise: number(lengthwise),
		crosswise: number(crosswise)
	}),
	behind<Right>('lengthwise', ({ alongLength }) => ({ alongLength: number(alongLength) }), written)
);
