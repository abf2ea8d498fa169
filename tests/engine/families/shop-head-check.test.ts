import { describe, expect, test } from 'vitest';
import type { Task } from '../../../src/lib/engine/tasks/task.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { rivetDashes } from '../../../src/lib/engine/trade/stock.ts';
import { drawingFaults } from './drawing-faults.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const shopHeadCheckTasks = await familyOf('shop-head-check');

/** How far the measured sizes stay from the nearest limit, inches. */
function room({ right }: Task): number {
	const apart = (size: string, limit: string) =>
		Math.abs(Number(right[size]) - Number(right[limit]));
	return Math.min(
		apart('width', 'leastWidth'),
		apart('width', 'mostWidth'),
		apart('height', 'leastHeight'),
		apart('height', 'mostHeight')
	);
}

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(shopHeadCheckTasks, level);

	test('sizes are in thousandths and clear of every limit by 0.004 in', () => {
		for (const task of tasks) {
			const { D, width, height } = task.drawn.given;
			expect(rivetDashes).toContain(Number(D) * 32);
			for (const size of [Number(width), Number(height)]) {
				expect(size * 1000).toBeCloseTo(Math.round(size * 1000), 9);
			}
			expect(room(task), task.number).toBeGreaterThanOrEqual(0.004);
		}
	});

	test('every judgement comes up, none of them nearly always', () => {
		for (const judgement of ['accept', 'drive more', 'replace']) {
			const share =
				tasks.filter(({ right }) => right.judgement === judgement).length / tasks.length;
			expect(share, judgement).toBeGreaterThan(0.15);
			expect(share, judgement).toBeLessThan(0.65);
		}
	});

	test('whose head is to be driven more was just driven, and the story says so', () => {
		const more = tasks.filter(({ right }) => right.judgement === 'drive more');
		expect(more.filter(({ drawn }) => !/\bjust\b/.test(drawn.story))).toEqual([]);
		expect(tasks.some(({ drawn }) => !/\bjust\b/.test(drawn.story))).toBe(true);
	});

	test('a head to be driven more can still come out within the limits', () => {
		for (const { right } of tasks.filter((task) => task.right.judgement === 'drive more')) {
			const [D, width, height] = [Number(right.D), Number(right.width), Number(right.height)];
			// The metal stays: width squared times height is the same at 1.5 D across.
			const flattened = height * (width / (1.5 * D)) ** 2;
			expect(flattened).toBeGreaterThan(0.33 * D);
			expect(flattened).toBeLessThan(0.66 * D);
		}
	});

	test('figures and effects can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
		expect(tasks.every((task) => outcomeOf(task, 'judgement', task.right.judgement ?? 0))).toBe(
			true
		);
	});
});
