import { describe, expect, test } from 'vitest';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { drillName } from '../../../src/lib/engine/quantity/drills.ts';
import { drawingFaults } from './drawing-faults.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const drillSizeTasks = await familyOf('drill-size');

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(drillSizeTasks, level);

	test('the drill is of the chart, and the fraction drill can be had', () => {
		for (const { drawn, right } of tasks) {
			expect(drillName(Number(right.size))?.replace('letter ', '')).toBe(drawn.given.drill);
			expect(drillName(Number(right.fraction))).toMatch(/\//);
		}
	});

	test('numbers and letters come up, and not the letter E, which is a fraction too', () => {
		const drills = new Set(tasks.map(({ drawn }) => String(drawn.given.drill)));
		expect([...drills].some((drill) => /^[A-Z]$/.test(drill))).toBe(true);
		expect([...drills].some((drill) => /^No/.test(drill))).toBe(true);
		expect(drills).not.toContain('E');
	});

	test('the drill stands between its two fractions', () => {
		for (const { right } of tasks) {
			expect(Number(right.under)).toBeLessThan(Number(right.size));
			expect(Number(right.fraction)).toBeGreaterThan(Number(right.size));
		}
	});

	test('figures and effects can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
		for (const task of tasks) {
			expect(task.drawn.asked.every((key) => outcomeOf(task, key, task.right[key] ?? 0))).toBe(
				true
			);
		}
	});
});
