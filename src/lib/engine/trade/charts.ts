import type { Table } from './table/table.ts';
import { allowances90, allowancesPerDegree } from './tables/allowance-chart.ts';
import { decimalEquivalents } from './tables/decimal-equivalents.ts';
import { densities } from './tables/densities.ts';
import { drillChart } from './tables/drill-chart.ts';
import { edgeDistances } from './tables/edge-distances.ts';
import { kChart } from './tables/k-chart.ts';
import { leastRadii } from './tables/least-radius.ts';
import { rivetAlloys } from './tables/rivet-alloys.ts';
import { dashNumbers } from './tables/rivet-dashes.ts';
import { rivetDrills } from './tables/rivet-drills.ts';
import { rivetHeads } from './tables/rivet-heads.ts';
import { rivetPitches } from './tables/rivet-pitches.ts';
import { rivetsPerInch } from './tables/rivets-per-inch.ts';

/** A table as it hangs on the wall of a shop. */
export interface Chart {
	/** Its name in a list of charts. */
	readonly name: string;
	readonly table: Table;
	/** Ids of rules: what a step that rests on one of them wants is looked up here. */
	readonly rules: readonly string[];
}

/*
 * Apart from the tables, since a family's first load has no use for it. One line a table, in the order
 * of the work.
 */
export const charts: readonly Chart[] = [
	chart('Rivet sizes', dashNumbers, 'number.code'),
	chart('Alloy letters', rivetAlloys, 'number.alloy'),
	chart('Head numbers', rivetHeads, 'number.head'),
	chart('Drills for rivets', rivetDrills, 'drill.rivet', 'drill.next-rivet', 'drill.removal'),
	chart('Number and letter drills', drillChart, 'drill.sizes', 'drill.clearance', 'drill.fraction'),
	chart('Edge distance', edgeDistances, 'edge.least'),
	chart('Rivet spacing', rivetPitches, 'row.pitch-least', 'row.spaces'),
	chart('Rivets per inch', rivetsPerInch, 'repair.per-inch'),
	chart('K for setback', kChart, 'bend.k'),
	chart('Bend allowance, 90°', allowances90, 'bend.allowance'),
	chart('Bend allowance, 1°', allowancesPerDegree, 'bend.allowance'),
	chart('Minimum bend radius', leastRadii, 'bend.least-radius'),
	chart('Densities', densities, 'cut.density'),
	chart(
		'Decimal equivalents',
		decimalEquivalents,
		'length.up',
		'diameter.three-t',
		'bend.chart-32nds'
	)
];

function chart(name: string, table: Table, ...rules: string[]): Chart {
	return { name, table, rules };
}
