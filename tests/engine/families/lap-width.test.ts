import { expect, test } from 'vitest';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { allTasks, givenAt, manyTasks, outcomeOf, sizeOf, slipsNamed } from './many-tasks.ts';
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
	for (const task of governed) {
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

test.each([
	{ entered: 0, says: 'would lie off the lap' },
	{ entered: -2, says: 'would lie off the lap' },
	{ entered: width - edge / 2, says: 'nearer than' },
	{ entered: width, says: 'as the first does' },
	{ entered: width + edge, says: 'more than it needs' },
	{ entered: 1e6, says: 'more than it needs' }
])('a lap $entered in wide: $says', ({ entered, says }) => {
	const outcome = outcomeOf(task, 'width', entered);
	expect(outcome?.says).toContain(says);
	if (outcome) expect(sizeOf(outcome).width).toBeLessThan(520);
});

test('rows too close are said to be', () => {
	const D = givenAt(task, 'D');
	expect(outcomeOf(task, 'rowsApart', 2 * D)?.says).toContain('closer than 2.5 D');
	expect(outcomeOf(task, 'rowsApart', Number(task.right.rowsApart))?.says).toContain('wide.');
	expect(outcomeOf(task, 'edge', edge)).toBeNull();
});
