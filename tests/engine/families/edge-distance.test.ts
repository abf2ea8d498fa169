import { expect, test } from 'vitest';
import { circle } from '../../../src/lib/engine/figures/drawing.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { rivetDashes } from '../../../src/lib/engine/trade/stock.ts';
import { allTasks, manyTasks, outcomeOf, sizeOf, slipsNamed } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const edgeDistanceTasks = await familyOf('edge-distance');

/** As it is given, or read off the rivet number. */
const diameterOf = ({ right }: Task) => Number(right.D ?? right.diameter);
const headOf = ({ right }: Task) => String(right.head);

test('rivets are stocked, and every rivet comes with both heads', () => {
	const stocked: readonly number[] = rivetDashes;
	const seen = new Set<string>();
	for (const task of allTasks(edgeDistanceTasks)) {
		const D = diameterOf(task);
		expect(stocked).toContain(D * 32);
		seen.add(`${D} ${headOf(task)}`);
	}
	expect(seen.size).toBe(2 * rivetDashes.length);
});

test('the factor of the other head is named for both heads', () => {
	for (const task of manyTasks(edgeDistanceTasks, 2)) {
		const flush = headOf(task) === 'countersunk';
		const D = diameterOf(task);
		const slips = slipsNamed(task, 'least', (flush ? 2 : 2.5) * D);
		expect(slips).toContain(flush ? 'protrudingFactor' : 'flushFactor');
		expect(slipsNamed(task, 'greatest', 10 * D)).toContain('greatestPitch');
	}
});

const task = drawTask(edgeDistanceTasks, 3, 1);
const D = diameterOf(task);

test.each([-1, 0, 0.3, 1.5, 3, 4, 4.5, 8000])(
	'a hole %d D from the edge keeps on its sheet',
	(times) => {
		const outcome = outcomeOf(task, 'greatest', times * D);
		expect(outcome && sizeOf(outcome).width).toBeLessThan(480);
	}
);

test('the hole is drawn where it was put, and in the colour of a slip where it is not as asked', () => {
	// Rivets are drawn 28 units in diameter, the edge stands at 290.
	const at = (times: number) => outcomeOf(task, 'greatest', times * D)?.drawing.shapes;
	expect(at(4)).toContainEqual(circle(290 - 4 * 28, 40, 14, 'paper', 'edge'));
	// Inside the limits, but not what was asked for.
	expect(at(3)).toContainEqual(circle(290 - 3 * 28, 40, 14, 'paper', 'slip'));
	expect(at(5)).toContainEqual(circle(290 - 5 * 28, 40, 14, 'paper', 'slip'));
});

test('at the second level and on, the diameter is read off a number that names the head given', () => {
	for (const task of [...manyTasks(edgeDistanceTasks, 2), ...manyTasks(edgeDistanceTasks, 3)]) {
		const number = /^MS20(470|426)(?:AD|DD)(\d)-\d+$/.exec(String(task.drawn.given.number));
		expect(number?.[1]).toBe(headOf(task) === 'countersunk' ? '426' : '470');
		expect(Number(number?.[2]) / 32).toBe(diameterOf(task));
		expect(task.drawn.given.D).toBeUndefined();
	}
});

test('the factor by itself is not drawn', () => {
	expect(outcomeOf(task, 'factor', 2)).toBeNull();
});
