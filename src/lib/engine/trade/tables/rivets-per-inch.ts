import { fraction, number } from '../../quantity/kinds.ts';
import { sameGauge } from '../gauges.ts';
import { source } from '../source.ts';
import { byLength } from '../table/axis.ts';
import { lookUpCrossing } from '../table/look-up.ts';
import { holding, table } from '../table/table.ts';
import { asNumber, places } from '../table/writing.ts';

/** Thickness, then rivets per inch in each column, as printed; null where nothing is printed. */
const printed: readonly (readonly [number, ...(number | null)[]])[] = [
	[0.016, 6.5, 4.9, null, null, null],
	[0.02, 6.5, 4.9, 3.9, null, null],
	[0.025, 6.9, 4.9, 3.9, null, null],
	[0.032, 8.9, 4.9, 3.9, 3.3, null],
	[0.036, 10.0, 5.6, 3.9, 3.3, 2.4],
	[0.04, 11.1, 6.2, 4.0, 3.3, 2.4],
	[0.051, null, 7.9, 5.1, 3.6, 2.4],
	[0.064, null, 9.9, 6.5, 4.5, 2.5],
	[0.081, null, 12.5, 8.1, 5.7, 3.1],
	[0.091, null, null, 9.1, 6.3, 3.5],
	[0.102, null, null, 10.3, 7.1, 3.9],
	[0.128, null, null, 12.9, 8.9, 4.9]
];

/**
 * AD rivets with protruding heads in each inch of width, for 2017 and clad 2024-T3 sheet. The
 * column of bolts is left out, and so are the shares that the notes under the table allow for
 * stringers, frames and single-lap joints.
 */
export const rivetsPerInch = table({
	id: 'rivets-per-inch',
	title: 'AD rivets per inch of width, clad 2024-T3 sheet',
	topic: 'repairs',
	called: 'the table of rivets per inch',
	source: source(
		'airframe',
		'ch. 4, p. 4-88, Fig. 4-169; the same in AC 43.13-1B, Table 4-10, p. 4-38, which names the alloys'
	),
	rows: byLength(
		'Thickness',
		printed.map(([thickness]) => thickness),
		{ write: places(3), means: sameGauge }
	),
	columns: byLength('Rivet diameter', [3 / 32, 1 / 8, 5 / 32, 3 / 16, 1 / 4], {
		write: asNumber(fraction)
	}),
	holds: holding(number, places(1)),
	cells: printed.map(([, ...counts]) => counts)
});

/** Rivets per inch of width for a sheet thickness and a rivet diameter, inches, as printed. */
export const perInchOfWidth = lookUpCrossing(rivetsPerInch, {
	name: 'perInchOfWidth',
	shown: 'table',
	words: {
		above: 'the number for thinner sheet',
		below: 'the number for thicker sheet',
		beside: 'the number for another rivet diameter'
	}
});
