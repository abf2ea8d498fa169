import { describe, expect, test } from 'vitest';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { drillName } from '../../../src/lib/engine/quantity/drills.ts';
import { diameterIn } from '../../../src/lib/engine/families/parts/numbered.ts';
import type { Fill } from '../../../src/lib/engine/figures/drawing.ts';
import { boundsOf } from '../../../src/lib/engine/figures/to-svg.ts';
import { rivetDashes } from '../../../src/lib/engine/trade/stock.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { drawingFaults } from './drawing-faults.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const drillForRivetTasks = await familyOf('drill-for-rivet');

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(drillForRivetTasks, level);

	test('rivets are stocked, and both drills can be had', () => {
		for (const { drawn, right } of tasks) {
			expect(rivetDashes).toContain(diameterIn(drawn.given) * 32);
			expect(drillName(Number(right.pilot))).not.toBeNull();
			expect(drillName(Number(right.final))).not.toBeNull();
		}
	});

	test('figures and effects can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
		expect(tasks.every((task) => outcomeOf(task, 'final', task.right.final ?? 0))).toBe(true);
	});

	test('the figure does not tell the diameter that the number stands for', () => {
		for (const { family, drawn, right } of tasks) {
			const say = (key: string) => (key === 'D' ? `D is ${Number(right.diameter)}` : key);
			const told = JSON.stringify(family.figure(drawn.given, say)).includes('D is');
			expect(told).toBe(level === 1);
		}
	});
});

// How far the shank goes into the sheet, in thicknesses.
test.each([
	{ hole: 'a few thousandths too small', over: -0.005, deep: 0 },
	{ hole: 'of its own size', over: 0, deep: 0.5 },
	{ hole: 'as listed', over: 0.0035, deep: 1.65 },
	{ hole: 'far too wide', over: 0.02, deep: 1.65 }
])('over a hole $hole, the rivet is drawn $deep sheets deep', ({ over, deep }) => {
	const task = drawTask(drillForRivetTasks, 1, 7);
	const outcome = outcomeOf(task, 'final', diameterIn(task.drawn.given) + over);
	const drawn = (fill: Fill) =>
		boundsOf(
			(outcome?.drawing.shapes ?? [])
				.filter((one) => one.kind === 'path' && one.fill === fill)
				.slice(0, 1)
		);
	const [sheet, shank] = [drawn('metal-a'), drawn('rivet')];
	expect((shank.bottom - sheet.top) / (sheet.bottom - sheet.top)).toBeCloseTo(deep, 2);
});

test('every rivet of the figure is drawn', () => {
	const drawn = new Set(
		manyTasks(drillForRivetTasks, 2).map((task) => diameterIn(task.drawn.given) * 32)
	);
	expect([...drawn].sort((one, other) => one - other)).toEqual([...rivetDashes]);
});
