import { describe, expect, test } from 'vitest';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { drillName } from '../../../src/lib/engine/quantity/drills.ts';
import { diameterIn } from '../../../src/lib/engine/families/rivets/parts/numbered.ts';
import { rivetDashes } from '../../../src/lib/engine/trade/stock.ts';
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

test('every rivet of the figure is drawn', () => {
	const drawn = new Set(
		manyTasks(drillForRivetTasks, 2).map((task) => diameterIn(task.drawn.given) * 32)
	);
	expect([...drawn].sort((one, other) => one - other)).toEqual([...rivetDashes]);
});
