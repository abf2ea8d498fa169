import { source } from './source.ts';

/** Sheet of the older gauge series stands beside sheet of the newer one, and a chart has one row. */
export const gaugeSource = source(
	'airframe',
	'ch. 4, pp. 4-61, 4-65 and 4-88, rows of Figs. 4-124, 4-128 and 4-169'
);

const newerOf: ReadonlyMap<number, number> = new Map([
	[0.051, 0.05],
	[0.064, 0.063],
	[0.072, 0.071],
	[0.081, 0.08],
	[0.091, 0.09],
	[0.102, 0.1],
	[0.128, 0.125]
]);

/** Thickness of the newer series, in inches, that shares a row with this one. */
export function sameGauge(thickness: number): number {
	return newerOf.get(thickness) ?? thickness;
}
