import { length } from '../../quantity/kinds.ts';
import { sameGauge } from '../gauges.ts';
import { source } from '../source.ts';
import { byLength, byName } from '../table/axis.ts';
import { lookUpCrossing } from '../table/look-up.ts';
import { holding, table } from '../table/table.ts';
import { places } from '../table/writing.ts';

/** Thickness, then the radius in each column, as printed. */
const printed: readonly (readonly [number, ...number[]])[] = [
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

/** Least inside bend radius in inches by thickness, alloy and temper. */
export const leastRadii = table({
	id: 'least-radius',
	title: 'Least inside bend radius, inches',
	topic: 'bends',
	source: source('airframe', 'ch. 4, p. 4-61, Fig. 4-124'),
	rows: byLength(
		'Thickness',
		printed.map(([thickness]) => thickness),
		{ write: places(3), means: sameGauge }
	),
	columns: byName(
		'Alloy and temper',
		[
			['5052-O', '6061-O', '5052-H32'],
			['7178-O', '2024-O', '5052-H34', '6061-T4', '7075-O'],
			['6061-T6'],
			['7075-T6'],
			['2024-T3', '2024-T4'],
			['2024-T6']
		],
		{ means: (name) => name.trim().toUpperCase() }
	),
	holds: holding(length, places(2), ' in'),
	cells: printed.map(([, ...radii]) => radii),
	stepped: true
});

/** Least inside bend radius in inches for an alloy and temper, `2024-T3`, and a thickness. */
export const minimumRadius = lookUpCrossing(leastRadii, {
	name: 'minimumRadius',
	columnFirst: true,
	shown: 'chart',
	words: {
		above: 'the radius for thinner sheet',
		below: 'the radius for thicker sheet',
		beside: 'another alloy or temper'
	}
});
