import { rulesOf, type Typed } from '../rule.ts';
import { down, nearest, number, off, up } from '../typed.ts';

interface Given {
	readonly T: number;
	readonly D: number;
	readonly width: number;
}

interface Right {
	readonly perInch: number;
	readonly eachSide: number;
	readonly total: number;
}

const { common, rare } = rulesOf<Given, Right>('rivets-each-side');

const none = Number.NaN;

/** Rivets an inch, a column a diameter in 32nds, a row a thickness. */
interface Table {
	readonly diameters: readonly number[];
	readonly rows: readonly (readonly number[])[];
}

/** FAA-H-8083-31B, ch. 4, Fig. 4-169, cell for cell AC 43.13-1B, Table 4-10. */
const wanted: Table = {
	diameters: [3, 4, 5, 6, 8],
	rows: [
		[0.016, 6.5, 4.9, none, none, none],
		[0.02, 6.5, 4.9, 3.9, none, none],
		[0.025, 6.9, 4.9, 3.9, none, none],
		[0.032, 8.9, 4.9, 3.9, 3.3, none],
		[0.036, 10, 5.6, 3.9, 3.3, 2.4],
		[0.04, 11.1, 6.2, 4, 3.3, 2.4],
		[0.051, none, 7.9, 5.1, 3.6, 2.4],
		[0.064, none, 9.9, 6.5, 4.5, 2.5],
		[0.081, none, 12.5, 8.1, 5.7, 3.1],
		[0.091, none, none, 9.1, 6.3, 3.5],
		[0.102, none, none, 10.3, 7.1, 3.9],
		[0.128, none, none, 12.9, 8.9, 4.9]
	]
};

/** AC 43.13-1B, Table 4-9, for bare sheet. */
const bareSheet: Table = {
	diameters: wanted.diameters,
	rows: [
		[0.016, 6.5, 4.9, none, none, none],
		[0.02, 6.9, 4.9, 3.9, none, none],
		[0.025, 8.6, 4.9, 3.9, none, none],
		[0.032, 11.1, 6.2, none, 3.3, none],
		[0.036, 12.5, 7, 4.5, 3.3, 2.4],
		[0.04, 13.8, 7.7, 5, 3.5, 2.4],
		[0.051, none, 9.8, 6.4, 4.5, 2.5],
		[0.064, none, 12.3, 8.1, 5.6, 3.1],
		[0.081, none, none, 10.2, 7.1, 3.9],
		[0.091, none, none, 11.4, 7.9, 4.4],
		[0.102, none, none, 12.8, 8.9, 4.9]
	]
};

/** The cell so many rows further down and so many columns further right. */
function cell({ T, D }: Given, table: Table, rowsDown: number, columnsRight: number): number {
	const gap = (row: readonly number[]) => Math.abs((row[0] ?? none) - T);
	const row = table.rows.reduce((best, other) => (gap(other) < gap(best) ? other : best));
	const column = table.diameters.indexOf(D * 32) + 1 + columnsRight;
	return column < 1 ? none : (table.rows[table.rows.indexOf(row) + rowsDown]?.[column] ?? none);
}

const aside =
	(rowsDown: number, columnsRight: number, table = wanted) =>
	(given: Given): number =>
		cell(given, table, rowsDown, columnsRight);

const whole = (value: number): number => up(value, 1);

/** Everything in one check, from rivets an inch. */
const worked = ({ width }: Given, perInch: number, right: Right): Typed | null =>
	off(perInch, right.perInch) === null
		? null
		: {
				perInch: number(perInch),
				eachSide: number(whole(perInch * width)),
				total: number(2 * whole(perInch * width))
			};

/** Rivets an inch and each side in one check. */
const two = (perInch: number, eachSide: number, right: Right): Typed | null =>
	off(perInch, right.perInch) === null && off(eachSide, right.eachSide) === null
		? null
		: { perInch: number(perInch), eachSide: number(eachSide) };

/** The misreadings of the table, for rivets an inch and for what follows. */
const misread = [
	['common', 'one row up: the thinner sheet', aside(-1, 0), 'rowUp'],
	['common', 'one row down: the thicker sheet', aside(1, 0), 'rowDown'],
	['common', 'one column to the left: the smaller rivet', aside(0, -1), 'columnLeft'],
	['common', 'one column to the right: the larger rivet', aside(0, 1), 'columnRight'],
	['rare', 'the table for bare sheet', aside(0, 0, bareSheet)],
	['rare', 'one row down and one column left', aside(1, -1), 'downAndLeft'],
	['rare', 'one row up and one column right', aside(-1, 1), 'upAndRight']
] as const;

const write = { common, rare };

export const rules = [
	...misread.flatMap(([rate, why, read, ...names]) => [
		write[rate](
			'perInch',
			why,
			(given, { perInch }) => off(read(given), perInch, number),
			...names
		),
		write[rate](
			'eachSide',
			why,
			(given, { eachSide }) => off(whole(read(given) * given.width), eachSide, number),
			...names
		),
		write[rate](
			'perInch',
			`${why}, carried on correctly`,
			(given, right) => {
				const all = worked(given, read(given), right);
				return all && { perInch: all['perInch'] ?? '', eachSide: all['eachSide'] ?? '' };
			},
			...names
		)
	]),
	common(
		'eachSide',
		'rounded down',
		({ width }, { perInch, eachSide }) => off(down(perInch * width, 1), eachSide, number),
		'down'
	),
	common(
		'eachSide',
		'rounded to the nearest',
		({ width }, { perInch, eachSide }) => off(Math.round(perInch * width), eachSide, number),
		'down'
	),
	common('eachSide', 'not rounded', ({ width }, { perInch, eachSide }) =>
		off(perInch * width, eachSide, number)
	),
	common(
		'eachSide',
		'rivets an inch rounded up first',
		({ width }, { perInch, eachSide }) => off(whole(whole(perInch) * width), eachSide, number),
		'wholePerInch'
	),
	rare('eachSide', 'rivets an inch rounded to the nearest first', ({ width }, right) =>
		off(whole(nearest(right.perInch, 1) * width), right.eachSide, number)
	),
	common(
		'eachSide',
		'both sides together',
		(_, { total, eachSide }) => off(total, eachSide, number),
		'bothForOne',
		'other-step:total'
	),
	common(
		'eachSide',
		'half of it: shared between the two sides',
		(_, { eachSide }) => number(whole(eachSide / 2)),
		'split'
	),
	common(
		'eachSide',
		'75 percent, as the note says for laps',
		({ width }, right) => off(whole(0.75 * right.perInch * width), right.eachSide, number),
		'lapShare',
		'lapShareAfter'
	),
	rare(
		'eachSide',
		'80 percent, as the note says for stringers',
		({ width }, right) => off(whole(0.8 * right.perInch * width), right.eachSide, number),
		'stringerShare'
	),
	rare(
		'eachSide',
		'60 percent, as the note says for frames',
		({ width }, right) => off(whole(0.6 * right.perInch * width), right.eachSide, number),
		'frameShare'
	),
	common(
		'eachSide',
		'rivets an inch, the width left out',
		(_, { perInch, eachSide }) => off(whole(perInch), eachSide, number),
		'noWidth'
	),
	rare(
		'eachSide',
		'width divided by rivets an inch',
		({ width }, { perInch, eachSide }) => off(whole(width / perInch), eachSide, number),
		'divided'
	),
	rare('eachSide', 'one more for the end', (_, { eachSide }) => number(eachSide + 1), 'oneMore'),
	rare(
		'eachSide',
		'the part of an inch dropped',
		({ width }, { perInch, eachSide }) => off(whole(perInch * down(width, 1)), eachSide, number),
		'inchesDown'
	),
	rare(
		'eachSide',
		'the part of an inch made a whole one',
		({ width }, { perInch, eachSide }) => off(whole(perInch * whole(width)), eachSide, number),
		'inchesUp'
	),
	rare(
		'eachSide',
		'the point in rivets an inch',
		({ width }, { perInch, eachSide }) => off(whole(10 * perInch * width), eachSide, number),
		'digits'
	),
	rare(
		'eachSide',
		'two mistakes: one row up, and rounded down',
		(given, { eachSide }) => off(down(aside(-1, 0)(given) * given.width, 1), eachSide, number),
		'down+rowUp'
	),
	rare(
		'eachSide',
		'two mistakes: one column left, and both sides',
		(given, { eachSide }) => off(2 * whole(aside(0, -1)(given) * given.width), eachSide, number),
		'bothForOne+columnLeft'
	),
	rare(
		'perInch',
		'rounded up to whole rivets',
		(_, { perInch }) => off(whole(perInch), perInch, number),
		'rounding',
		'wholePerInch'
	),
	rare(
		'perInch',
		'two digits changed places',
		(_, { perInch }) => {
			const text = perInch.toFixed(1);
			return text.length === 3 ? off(Number([...text].reverse().join('')), perInch, number) : null;
		},
		'digits'
	),
	rare(
		'perInch',
		'the point left out',
		(_, { perInch }) => off(10 * perInch, perInch, number),
		'digits'
	),
	common(
		'perInch',
		'75 percent, as the note says for laps',
		(_, { perInch }) => off(0.75 * perInch, perInch, number),
		'lapShare'
	),
	common(
		'perInch',
		'the whole width: rivets each side',
		(_, { eachSide, perInch }) => off(eachSide, perInch, number),
		'other-step:eachSide'
	),
	common(
		'total',
		'one side only',
		(_, { eachSide }) => number(eachSide),
		'oneSide',
		'other-step:eachSide'
	),
	common(
		'total',
		'doubled before it is rounded',
		({ width }, { perInch, total }) => off(whole(2 * perInch * width), total, number),
		'roundedLast'
	),
	rare(
		'total',
		'four times: two rows on each side',
		(_, { eachSide }) => number(4 * eachSide),
		'fourTimes'
	),
	rare('total', 'one fewer: the one in the middle counts once', (_, { total }) =>
		number(total - 1)
	),
	rare(
		'total',
		'rivets an inch doubled',
		(_, { perInch }) => number(whole(2 * perInch)),
		'noWidth'
	),
	rare('total', 'not rounded', ({ width }, { perInch, total }) =>
		off(2 * perInch * width, total, number)
	),
	common(
		'eachSide',
		'rivets an inch right, then rounded down',
		({ width }, right) => two(right.perInch, down(right.perInch * width, 1), right),
		'down'
	),
	common(
		'eachSide',
		'rivets an inch right, then both sides',
		(_, right) => two(right.perInch, right.total, right),
		'bothForOne',
		'other-step:total'
	),
	common(
		'eachSide',
		'rivets an inch right, then 75 percent',
		({ width }, right) => two(right.perInch, whole(0.75 * right.perInch * width), right),
		'lapShare',
		'lapShareAfter'
	),
	rare(
		'perInch',
		'the two each in the field of the other',
		(_, right) => two(right.eachSide, right.perInch, right),
		'other-step'
	),
	common(
		'perInch',
		'one row up, all carried on correctly',
		(given, right) => worked(given, aside(-1, 0)(given), right),
		'rowUp'
	),
	common(
		'perInch',
		'one column left, all carried on correctly',
		(given, right) => worked(given, aside(0, -1)(given), right),
		'columnLeft'
	),
	common(
		'eachSide',
		'rivets an inch right, rounded down, doubled correctly',
		(given, right) => {
			const side = down(right.perInch * given.width, 1);
			return (
				off(side, right.eachSide) && {
					perInch: number(right.perInch),
					eachSide: number(side),
					total: number(2 * side)
				}
			);
		},
		'down'
	),
	common(
		'total',
		'the others right, one side only',
		(_, { perInch, eachSide }) => ({
			perInch: number(perInch),
			eachSide: number(eachSide),
			total: number(eachSide)
		}),
		'oneSide',
		'other-step:eachSide'
	)
];
