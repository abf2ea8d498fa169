import { describe, expect, test } from 'vitest';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { drawingFaults } from './drawing-faults.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const shopHeadTasks = await familyOf('shop-head');

/** Diameters of solid rivets up to 3/8 in, in 32nds; 7/32 in is not stocked. */
const made = [3, 4, 5, 6, 8, 10, 12];

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(shopHeadTasks, level);

	test('rivets are made, and of an alloy that the rule is for', () => {
		for (const { drawn } of tasks) {
			expect(made).toContain(Number(drawn.given.D) * 32);
			expect(['A', 'AD', 'B', 'DD']).toContain(drawn.told?.[0]?.[1]);
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

test('level 1 asks for the width or the height, the others for both', () => {
	const asked = (level: 1 | 2) =>
		new Set(manyTasks(shopHeadTasks, level).map(({ drawn }) => drawn.asked.join()));
	expect(asked(1)).toEqual(new Set(['width', 'height']));
	expect(asked(2)).toEqual(new Set(['width,height']));
});
