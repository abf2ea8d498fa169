import { TradeError, type TradeFunction } from '../../solver/trade-function.ts';
import { named, text } from '../shown.ts';
import { cellAt, columnOf, rowOf } from '../table/reading.ts';
import { drillChart } from '../tables/drill-chart.ts';
import { leastRadii } from '../tables/least-radius.ts';

/* Slips of look-ups as methods called them before every look-up had its own. */

export const radiusBeside: TradeFunction = {
	takes: ['text', 'length', 'number', 'number'],
	gives: 'length',
	run: (alloy: string, thickness: number, down: number, right: number) =>
		cellAt(leastRadii, rowOf(leastRadii, thickness) + down, columnOf(leastRadii, alloy) + right),
	show: ([alloy = [], thickness = []]) => [
		text('the cell beside '),
		...named('chart')([alloy, thickness])
	]
};

function drillFrom(name: string, down: number): string {
	const drill = drillChart.rows.keys[rowOf(drillChart, name) + down]?.[0];
	if (drill) return drill;
	throw new TradeError(`The chart has no row next to ${name.slice(0, 20)}.`);
}

export const nextLarger: TradeFunction = {
	takes: ['text'],
	gives: 'text',
	run: (name: string) => drillFrom(name, -1),
	show: named('next larger than')
};

export const nextSmaller: TradeFunction = {
	takes: ['text'],
	gives: 'text',
	run: (name: string) => drillFrom(name, 1),
	show: named('next smaller than')
};
