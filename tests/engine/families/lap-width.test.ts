import { expect, test } from 'vitest';
import type { Outcome } from '../../../src/lib/engine/families/family.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { allTasks, givenAt, manyTasks, outcomeOf, sizeOf, slipsNamed } from './many-tasks.ts';
import { circlesIn } from './circles.ts';
import { familyOf } from './family-of.ts';

const lapWidthTasks = await familyOf('lap-width');

/** Least pitch in rivet diameters: FAA-H-8083-31B ch. 4 p. 4-34, Fig. 4-80. */
const leastPitch: Readonly<Record<string, Readonly<Record<number, number>>>> = {
	protruding: { 1: 3, 2: 4, 3: 3 },
	countersunk: { 1: 3.5, 2: 4.5, 3: 3.5 }
};

test('no pitch is under the least for its head and rows', () => {
	for (const task of allTasks(lapWidthTasks)) {
		const { head } = task.drawn.given as { head: string };
		const times = givenAt(task, 'pitch') / givenAt(task, 'D');
		const least = leastPitch[head]?.[givenAt(task, 'rows')] ?? NaN;
		expect(times).toBeGreaterThanOrEqual(least);
		expect(times).toBeLessThanOrEqual(10);
	}
});

test('with three rows the closest distance sometimes governs', () => {
	const governed = manyTasks(lapWidthTasks, 3).filter(
		({ right }) => right.rowsApart === right.closest
	);
	expect(governed.length).toBeGreaterThan(10);
	expect(governed.length).toBeLessThan(150);
	const told = governed.filter(
		({ right }) => Number(right.closest) - Number(right.byPitch) > 1 / 64 + 0.001
	);
	expect(told.length).toBeGreaterThan(10);
	for (const task of told) {
		expect(slipsNamed(task, 'rowsApart', Number(task.right.byPitch))).toEqual(['pitchAlone']);
	}
});

test('one edge distance too few is named', () => {
	for (const task of manyTasks(lapWidthTasks, 2)) {
		const { width, edge } = task.right;
		expect(slipsNamed(task, 'width', Number(width) - Number(edge))).toContain('oneEdge');
	}
});

const task = drawTask(lapWidthTasks, 3, 5);
const width = Number(task.right.width);
const edge = Number(task.right.edge);

test.each([0, -2, width - edge / 2, width, width + edge, 1e6])(
	'a lap %d in wide keeps on its sheet',
	(entered) => {
		const outcome = outcomeOf(task, 'width', entered);
		expect(outcome && sizeOf(outcome).width).toBeLessThan(520);
	}
);

test.each([0, -1, 1e6])('rows %d in apart keep on their sheet', (entered) => {
	const outcome = outcomeOf(task, 'rowsApart', entered);
	expect(outcome && sizeOf(outcome).width).toBeLessThan(520);
});

/** Where the rows stand across the lap, and in what line, left to right. */
function rowsIn(outcome: Outcome | null): [x: number, line: string][] {
	return [...new Map(circlesIn(outcome).map(({ x, line }) => [Math.round(x * 10) / 10, line]))];
}

test('rows are drawn as far apart as they were put, to the scale of the right lap', () => {
	const { rowsApart } = task.right;
	const [first, second, third] = [0, 1, 2].map(
		(row) => ((edge + row * Number(rowsApart)) * 170) / width
	);
	const right = rowsIn(outcomeOf(task, 'rowsApart', rowsApart ?? 0));
	expect(right.map(([x]) => x)).toEqual(
		[first, second, third].map((x) => expect.closeTo(x ?? 0, 0))
	);
	const narrow = rowsIn(outcomeOf(task, 'width', width - edge / 2));
	expect(narrow.map(([, line]) => line)).toEqual(['edge', 'edge', 'slip']);
	const close = rowsIn(outcomeOf(task, 'rowsApart', Number(rowsApart) / 2));
	expect(close.map(([, line]) => line)).toEqual(['slip', 'slip', 'slip']);
});

test('an edge distance by itself is not drawn', () => {
	expect(outcomeOf(task, 'edge', edge)).toBeNull();
});

test('rows and laps come out on 64ths, as a shop lays them out', () => {
	for (const { drawn, right } of allTasks(lapWidthTasks)) {
		expect(Number.isInteger(Number(drawn.given.pitch) * 16)).toBe(true);
		for (const key of ['edge', 'rowsApart', 'width'])
			expect(Number(right[key]) * 64).toBeCloseTo(Math.round(Number(right[key]) * 64), 9);
	}
});
