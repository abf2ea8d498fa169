import { describe, expect, test } from 'vitest';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { rivetDashes, sheetThicknesses } from '../../../src/lib/engine/trade/stock.ts';
import { drawingFaults } from './drawing-faults.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const rivetDiameterTasks = await familyOf('rivet-diameter');

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(rivetDiameterTasks, level);

	test('sheet and rivet are stocked', () => {
		for (const { drawn, right } of tasks) {
			expect(sheetThicknesses).toContain(drawn.given.thickest);
			expect(rivetDashes).toContain(Number(right.diameter) * 32);
		}
	});

	test('figures and effects can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
		expect(tasks.every((task) => outcomeOf(task, 'diameter', task.right.diameter ?? 0))).toBe(true);
	});
});

test('a sheet whose rivet comes out under 3/32 in is drawn from level 2 on', () => {
	const least = (level: 1 | 2) =>
		Math.min(
			...manyTasks(rivetDiameterTasks, level).map(({ drawn }) => Number(drawn.given.thickest))
		);
	expect(least(1)).toBe(0.02);
	expect(least(2)).toBe(0.016);
});
