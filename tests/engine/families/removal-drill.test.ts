import { describe, expect, test } from 'vitest';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { drillName } from '../../../src/lib/engine/quantity/drills.ts';
import { rivetDashes, sheetThicknesses } from '../../../src/lib/engine/trade/stock.ts';
import { drawingFaults } from './drawing-faults.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const removalDrillTasks = await familyOf('removal-drill');

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(removalDrillTasks, level);

	test('rivets and sheets are stocked, and the drill can be had', () => {
		for (const { drawn, right } of tasks) {
			expect(rivetDashes).toContain(Number(drawn.given.D) * 32);
			for (const layer of drawn.given.layers as readonly number[]) {
				expect(sheetThicknesses).toContain(layer);
			}
			expect(drillName(Number(right.drill))).toMatch(/\//);
		}
	});

	test('figures and effects can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
		expect(tasks.every((task) => outcomeOf(task, 'drill', task.right.drill ?? 0))).toBe(true);
	});
});
