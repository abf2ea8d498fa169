import { length } from '../../quantity/kinds.ts';
import { drillSize } from '../../quantity/drills.ts';
import { source } from '../source.ts';
import { byName } from '../table/axis.ts';
import { lookUp } from '../table/look-up.ts';
import { holding, measure, measures, table } from '../table/table.ts';
import { places } from '../table/writing.ts';

/** From the largest, Z, over A and No. 1 down to No. 60. The fraction drills between are left out. */
const drills: readonly string[] = [
	...'ZYXWVUTSRQPONMLKJIHGFEDCBA',
	...Array.from({ length: 60 }, (_, i) => `No. ${i + 1}`)
];

function sizeOf(name: string): number | undefined {
	return drillSize(name)?.valueOf();
}

/** Sizes of number and letter drills; `quantity/drills.ts` has the numbers. */
export const drillChart = table({
	id: 'drill-chart',
	title: 'Number and letter drills',
	topic: 'holes',
	called: 'the drill chart',
	source: source('airframe', 'ch. 4, p. 4-18, Fig. 4-47'),
	rows: byName(
		'Drill',
		drills.map((name) => [name]),
		{
			// However it is written: `#30` is `No. 30`.
			means: (name) => String(sizeOf(name)),
			advice: 'write a number from No. 1 to No. 60, a letter or a fraction'
		}
	),
	...measures({ size: measure('Size, in', holding(length, places(4))) }),
	cells: drills.map((name) => [sizeOf(name) ?? null])
});

/** Size in inches of the drill called `No. 30`, `F` or `1/8`. */
export const chartSize = lookUp(drillChart, {
	name: 'chartSize',
	column: 'size',
	shown: 'chart',
	otherwise: sizeOf,
	words: {
		above: 'the next larger drill',
		below: 'the next smaller drill',
		twoAbove: 'that drill is larger',
		twoBelow: 'that drill is smaller'
	}
});
