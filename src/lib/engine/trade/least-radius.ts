import { source } from './source.ts';
import { TradeError } from '../solver/trade-function.ts';

/** Least inside bend radius by alloy, temper and thickness, in inches. */
export const leastRadiusSource = source('airframe', 'ch. 4, p. 4-61, Fig. 4-124');

/** The tempers that share a column of the chart, left to right. */
export const radiusColumns: readonly (readonly string[])[] = [
	['5052-O', '6061-O', '5052-H32'],
	['7178-O', '2024-O', '5052-H34', '6061-T4', '7075-O'],
	['6061-T6'],
	['7075-T6'],
	['2024-T3', '2024-T4'],
	['2024-T6']
];

/** Rows of the chart: thickness, then the radius in each column. */
export const radiusRows: readonly (readonly number[])[] = [
	[0.012, 0.03, 0.03, 0.03, 0.03, 0.06, 0.06],
	[0.016, 0.03, 0.03, 0.03, 0.03, 0.09, 0.09],
	[0.02, 0.03, 0.03, 0.03, 0.12, 0.09, 0.09],
	[0.025, 0.03, 0.03, 0.06, 0.16, 0.12, 0.09],
	[0.032, 0.03, 0.03, 0.06, 0.19, 0.12, 0.12],
	[0.04, 0.06, 0.06, 0.09, 0.22, 0.16, 0.16],
	[0.05, 0.06, 0.06, 0.12, 0.25, 0.19, 0.19],
	[0.063, 0.06, 0.09, 0.16, 0.31, 0.22, 0.25],
	[0.071, 0.09, 0.12, 0.16, 0.38, 0.25, 0.31],
	[0.08, 0.09, 0.16, 0.19, 0.44, 0.31, 0.38],
	[0.09, 0.09, 0.19, 0.22, 0.5, 0.38, 0.44],
	[0.1, 0.12, 0.22, 0.25, 0.62, 0.44, 0.5],
	[0.125, 0.12, 0.25, 0.31, 0.88, 0.5, 0.62],
	[0.16, 0.16, 0.31, 0.44, 1.25, 0.75, 0.75],
	[0.19, 0.19, 0.38, 0.56, 1.38, 1.0, 1.0],
	[0.25, 0.31, 0.62, 0.75, 2.0, 1.25, 1.25],
	[0.312, 0.44, 1.25, 1.38, 2.5, 1.5, 1.5],
	[0.375, 0.44, 1.38, 1.5, 2.5, 1.88, 1.88]
];

/**
 * Sheet sizes of the older gauge series beside the ones the chart prints: the chart's row is
 * used for both (FAA-H-8083-31B, columns of Figs. 4-124, 4-128 and 4-169).
 */
export const sameRow: Readonly<Record<number, number>> = {
	0.051: 0.05,
	0.064: 0.063,
	0.072: 0.071,
	0.081: 0.08,
	0.091: 0.09,
	0.102: 0.1,
	0.128: 0.125
};

/**
 * Least inside bend radius in inches for an alloy and temper, `2024-T3`, in sheet of `thickness`
 * inches. Throws a `TradeError` when the chart has no such row or column.
 */
export function leastRadius(alloy: string, thickness: number): number {
	return radiusBeside(alloy, thickness, 0, 0);
}

/**
 * The radius so many rows below and columns to the right of the wanted one: what is read when
 * the eye slips. Throws a `TradeError` beyond the edge of the chart.
 */
export function radiusBeside(
	alloy: string,
	thickness: number,
	down: number,
	right: number
): number {
	const row = radiusRows[rowOf(thickness) + down];
	const column = columnOf(alloy) + right;
	const radius = column < 0 ? undefined : row?.[column + 1];
	if (radius === undefined) throw new TradeError('That place is beyond the edge of the chart.');
	return radius;
}

/** The annealed temper of an alloy: `2024-T3` → `2024-O`. */
export function annealed(alloy: string): string {
	return `${alloy.split('-')[0] ?? ''}-O`;
}

/** Row of the chart for a thickness in inches, counted from 0. */
export function rowOf(thickness: number): number {
	const printed = sameRow[thickness] ?? thickness;
	const row = radiusRows.findIndex(
		([rowThickness]) => Math.abs((rowThickness ?? 0) - printed) < 1e-6
	);
	if (row >= 0) return row;
	const sizes = radiusRows.map(([rowThickness]) => rowThickness?.toFixed(3)).join(', ');
	throw new TradeError(`The chart has no row for that thickness; its rows are ${sizes} in.`);
}

function columnOf(alloy: string): number {
	const wanted = alloy.trim().toUpperCase();
	const column = radiusColumns.findIndex((names) => names.includes(wanted));
	if (column >= 0) return column;
	throw new TradeError(
		`The chart has no column for ${alloy.slice(0, 20)}; it has ${radiusColumns.flat().join(', ')}.`
	);
}
