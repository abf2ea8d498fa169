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

	test('letters come up from level 2 on', () => {
		const letters = tasks.filter(({ drawn }) => /^[A-Z]$/.test(String(drawn.given.drill)));
		expect(letters.length > 0).toBe(level > 1);
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
