import { describe, expect, test } from 'vitest';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { rivetDashes, sheetThicknesses } from '../../../src/lib/engine/trade/stock.ts';
import { drawingFaults } from './drawing-faults.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const rivetLengthTasks = await familyOf('rivet-length');

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(rivetLengthTasks, level);

	test('sheets and rivets are stocked, and the rivet is three times the thickest or a hair less', () => {
		for (const { drawn } of tasks) {
			const layers = drawn.given.layers as readonly number[];
			const D = Number(drawn.given.D);
			expect(layers).toHaveLength(level === 1 ? 2 : 3);
			for (const layer of layers) expect(sheetThicknesses).toContain(layer);
			expect(rivetDashes).toContain(D * 32);
			// 3/16 in for 0.063 in: 7/32 in is not stocked.
			expect(D).toBeGreaterThanOrEqual(3 * Math.max(...layers) - 0.002);
		}
	});

	test('figures and effects can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
		expect(tasks.every((task) => outcomeOf(task, 'length', task.right.length ?? 0))).toBe(true);
	});
});

test('what a length does: too short, thin head, full head, bent over', () => {
	const task = drawTask(rivetLengthTasks, 1, 3);
	const { right, drawn } = task;
	const says = (entered: number) => outcomeOf(task, 'length', entered)?.says ?? '';
	const [grip, D, needed] = [Number(right.grip), Number(drawn.given.D), Number(right.needed)];
	expect(says(grip - 0.01)).toContain('does not even come through');
	expect(says(grip + 0.4 * D)).toContain('too little for any head');
	expect(says(grip + 1.1 * D)).toContain('where 1.5D is wanted');
	expect(says(Number(right.length))).toContain('enough for a full shop head');
	expect(says(needed + 1 / 16)).toContain('bends over');
});
