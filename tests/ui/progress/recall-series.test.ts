import { expect, test } from 'vitest';
import type { DayRecall } from '../../../src/lib/engine/schedule/history.ts';
import { seriesOf, unmetTopics } from '../../../src/lib/ui/progress/recall-series.ts';

const steps = new Map([
	['rivets', 27],
	['bends', 21],
	['holes', 9]
]);

const rivets = { recall: 0.6, met: 2 };
const bends = { recall: 0.8, met: 1 };

/** Rivets from the first day on, bends from the third. */
const days: DayRecall[] = [
	{ day: 10, all: rivets, topics: new Map([['rivets', rivets]]) },
	{ day: 11, all: rivets, topics: new Map([['rivets', rivets]]) },
	{
		day: 12,
		all: { recall: 0.7, met: 3 },
		topics: new Map([
			['rivets', rivets],
			['bends', bends]
		])
	}
];

test('every topic with a step met has a series, from its first day on, and all have one', () => {
	const series = seriesOf(days, steps);
	expect(series.map(({ name, met, steps: all }) => [name, met, all])).toEqual([
		['All topics', 3, 57],
		['Rivets', 2, 27],
		['Bends', 1, 21]
	]);
	expect(series.map(({ points }) => points.map(({ day }) => day))).toEqual([
		[10, 11, 12],
		[10, 11, 12],
		[12]
	]);
	// Of all steps, as the plan counts: one not met is not right.
	expect(series[0]?.points[2]?.recall).toBeCloseTo((0.7 * 3) / 57, 12);
});

test('one topic alone needs no series for all', () => {
	expect(seriesOf(days.slice(0, 2), steps).map(({ name }) => name)).toEqual(['Rivets']);
});

test('topics without a step met are named', () => {
	expect(unmetTopics(days, steps)).toEqual(['Holes and drills']);
	expect(unmetTopics(days.slice(0, 1), steps)).toEqual(['Bends', 'Holes and drills']);
});
