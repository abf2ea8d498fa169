import { leastRadii } from '../../trade/second-reading.ts';
import { behind, rulesOf, type Typed } from '../rule.ts';
import {
	bareMillimetres,
	decimal,
	down,
	fraction,
	hundredths,
	nearest,
	off,
	rounded,
	swapped,
	up
} from '../typed.ts';

interface Given {
	readonly alloy: string;
	readonly T: number;
}

interface Right {
	readonly radius: number;
	readonly in32nds: number;
	readonly bar: number;
}

const { common, rare } = rulesOf<Given, Right>('least-bend-radius');

/** FAA-H-8083-31B, ch. 4, p. 4-61, Fig. 4-124: a row a thickness, a column a group of alloys. */
const columns = [
	['5052-O', '6061-O', '5052-H32'],
	['7178-O', '2024-O', '5052-H34', '6061-T4', '7075-O'],
	['6061-T6'],
	['7075-T6'],
	['2024-T3', '2024-T4'],
	['2024-T6']
];
/** The bars in the rack that the task shows. */
const rack = [1 / 16, 3 / 32, 1 / 8, 5 / 32, 3 / 16, 1 / 4];

/** The bar so many places further on in the rack. */
const barBeside = (bar: number, places: number): number =>
	rack[rack.indexOf(bar) + places] ?? Number.NaN;

/** The cell so many rows further down and so many columns further right. */
function cell({ alloy, T }: Given, rowsDown: number, columnsRight: number): number {
	const column = columns.findIndex((group) => group.includes(alloy));
	const gap = (row: readonly number[]) => Math.abs((row[0] ?? Number.NaN) - T);
	const nearestRow = leastRadii.reduce((best, row) => (gap(row) < gap(best) ? row : best));
	const at = column + columnsRight;
	// The first cell of a row is its thickness.
	return at < 0
		? Number.NaN
		: (leastRadii[leastRadii.indexOf(nearestRow) + rowsDown]?.[at + 1] ?? Number.NaN);
}

/** Another temper of the same alloy. */
function temper(given: Given, other: string): number {
	return cell({ ...given, alloy: `${given.alloy.slice(0, 4)}-${other}` }, 0, 0);
}

const known = (alloy: string, other: string): boolean =>
	columns.flat().includes(`${alloy.slice(0, 4)}-${other}`);

/** A radius, and the sharpest bar of 32nds for it, in one check. */
const worked = (radius: number, right: Right): Typed | null =>
	off(radius, right.radius) === null
		? null
		: { radius: decimal(radius), bar: fraction(nearest(radius, 32)) };

const written = [
	common(
		'radius',
		'one row up: the thinner sheet',
		(given, { radius }) => off(cell(given, -1, 0), radius, hundredths),
		'rowUp'
	),
	common(
		'radius',
		'one row down: the thicker sheet',
		(given, { radius }) => off(cell(given, 1, 0), radius, hundredths),
		'rowDown'
	),
	common(
		'radius',
		'one column to the left',
		(given, { radius }) => off(cell(given, 0, -1), radius, hundredths),
		'columnLeft'
	),
	common(
		'radius',
		'one column to the right',
		(given, { radius }) => off(cell(given, 0, 1), radius, hundredths),
		'columnRight'
	),
	rare(
		'radius',
		'one row up and one column to the left',
		(given, { radius }) => off(cell(given, -1, -1), radius, hundredths),
		'upAndLeft'
	),
	rare(
		'radius',
		'one row up and one column to the right',
		(given, { radius }) => off(cell(given, -1, 1), radius, hundredths),
		'upAndRight'
	),
	rare(
		'radius',
		'one row down and one column to the left',
		(given, { radius }) => off(cell(given, 1, -1), radius, hundredths),
		'downAndLeft'
	),
	rare(
		'radius',
		'one row down and one column to the right',
		(given, { radius }) => off(cell(given, 1, 1), radius, hundredths),
		'downAndRight'
	),
	common(
		'radius',
		'the annealed temper of the alloy',
		(given, { radius }) =>
			known(given.alloy, 'O') ? off(temper(given, 'O'), radius, hundredths) : null,
		'annealed'
	),
	common(
		'radius',
		'T6 of the alloy',
		(given, { radius }) =>
			known(given.alloy, 'T6') ? off(temper(given, 'T6'), radius, hundredths) : null,
		({ alloy }) => (alloy === '2024-O' ? '' : 'harder')
	),
	rare(
		'radius',
		'the usual hard temper for the annealed one',
		(given, { radius }) =>
			given.alloy === '2024-O' ? off(temper(given, 'T3'), radius, hundredths) : null,
		'harder'
	),
	rare(
		'radius',
		'two rows down',
		(given, { radius }) => off(cell(given, 2, 0), radius, hundredths),
		'twoRowsDown'
	),
	common(
		'radius',
		'the thickness for the radius: 1T',
		({ T }, { radius }) => off(T, radius),
		'thickness'
	),
	rare(
		'radius',
		'3T, as a rule of thumb',
		({ T }, { radius }) => off(3 * T, radius),
		'threeTimesT'
	),
	rare('radius', '2T, as a rule of thumb', ({ T }, { radius }) => off(2 * T, radius), 'twiceT'),
	rare(
		'radius',
		'the thickness taken off: to the outside',
		({ T }, { radius }) => off(radius - T, radius),
		'lessT'
	),
	rare(
		'radius',
		'the thickness added: to the outside',
		({ T }, { radius }) => off(radius + T, radius),
		'plusT'
	),
	rare(
		'radius',
		'doubled: the diameter of the bar',
		(_, { radius }) => off(2 * radius, radius, hundredths),
		'diameterOfBar'
	),
	common(
		'radius',
		'the point one place too far right',
		(_, { radius }) => off(10 * radius, radius, hundredths),
		'digits'
	),
	rare(
		'radius',
		'two digits changed places',
		(_, { radius }) => swapped(radius, hundredths, 0),
		'digits'
	),
	rare('radius', 'to the nearest eighth', (_, { radius }) => rounded(radius, 8), 'rounding'),
	rare(
		'radius',
		'the hundredths read as 64ths',
		(_, { radius }) => off((radius * 100) / 64, radius, fraction),
		'in64ths'
	),
	rare(
		'radius',
		'millimetres, typed without the unit',
		(_, { radius }) => bareMillimetres(radius),
		'unit'
	),
	common(
		'bar',
		'the next bar up in sixteenths',
		(_, { bar }) => off(up(bar, 16), bar, fraction),
		'blunter'
	),
	common(
		'bar',
		'the bar below in sixteenths: near enough',
		(_, { bar }) => off(down(bar, 16), bar, fraction),
		'under'
	),
	common('bar', 'one bar sharper', (_, { bar }) => off(barBeside(bar, -1), bar, fraction), 'under'),
	common(
		'bar',
		'one bar blunter, to be safe',
		(_, { bar }) => off(barBeside(bar, 1), bar, fraction),
		'blunter'
	),
	rare(
		'bar',
		'the diameter of the bar',
		(_, { bar }) => off(2 * bar, bar, fraction),
		'barDiameter'
	),
	rare(
		'bar',
		'half of it: takes the chart for a diameter',
		(_, { bar }) => off(bar / 2, bar, fraction),
		'under',
		'halfBar'
	),
	rare(
		'bar',
		'the next bar up in eighths',
		(_, { bar }) => off(up(bar, 8), bar, fraction),
		'upToEighth'
	),
	rare(
		'bar',
		'the hundredths read as 32nds',
		(_, { radius, bar }) => off((radius * 100) / 32, bar, fraction),
		'decimalsAs32nds'
	),
	rare(
		'bar',
		'the sheet added to it',
		({ T }, { bar }) => off(up(bar + T, 32), bar, fraction),
		'plusThickness'
	),
	rare('bar', 'the sheet itself, as a bar', ({ T }, { bar }) => off(up(T, 32), bar, fraction)),
	rare(
		'bar',
		'one row up in the chart',
		(given, { bar }) => off(nearest(cell(given, -1, 0), 32), bar, fraction),
		'rowUp'
	),
	common(
		'radius',
		'one row up, and the bar for that',
		(given, right) => worked(cell(given, -1, 0), right),
		'rowUp',
		'noBar'
	),
	common(
		'radius',
		'one column to the right, and the bar for that',
		(given, right) => worked(cell(given, 0, 1), right),
		'columnRight',
		'noBar'
	),
	common(
		'radius',
		'one row down, and the bar for that',
		(given, right) => worked(cell(given, 1, 0), right),
		'rowDown',
		'noBar'
	)
];

export const rules = behind<Right>(
	'bar',
	({ radius }) => ({ radius: hundredths(radius) }),
	written
);
