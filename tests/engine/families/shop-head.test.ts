import { describe, expect, test } from 'vitest';
import { type Level, levels } from '../../../src/lib/engine/families/level.ts';
import { rivetNumberParts } from '../../../src/lib/engine/trade/rivet-code.ts';
import { drawingFaults } from './drawing-faults.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const shopHeadTasks = await familyOf('shop-head');

/** Diameters that AD, DD and D rivets are bought in, in 32nds (NAVEDTRA 14315, ch. 3). */
const made = { '2117': [3, 4, 5, 6, 8], '2024': [5, 6, 8], '2017': [5, 6, 8] } as const;

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(shopHeadTasks, level);

	test('rivets are made, and the width goes by their alloy', () => {
		for (const { drawn, right } of tasks) {
			const number = String(drawn.given.number ?? drawn.told?.[0]?.[1]);
			const { alloy, diameterDash } = rivetNumberParts(number);
			expect(made[alloy as keyof typeof made]).toContain(diameterDash);
			const times = alloy === '2017' ? 1.4 : 1.5;
			expect(right.width).toBeCloseTo((times * diameterDash) / 32, 12);
		}
	});

	test('the diameter is given at level 1 alone', () => {
		for (const { drawn } of tasks) expect('D' in drawn.given).toBe(level === 1);
	});

	test('figures and effects can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
		for (const task of tasks) {
			const sizes = task.drawn.asked.filter((key) => key !== 'diameter');
			expect(sizes.every((key) => outcomeOf(task, key, task.right[key] ?? 0))).toBe(true);
		}
	});
});

test('level 1 asks for the width or the height, the others for both', () => {
	const asked = (level: Level) =>
		new Set(manyTasks(shopHeadTasks, level).map(({ drawn }) => drawn.asked.join()));
	expect(asked(1)).toEqual(new Set(['width', 'height']));
	expect(asked(2)).toEqual(new Set(['width,height']));
	expect(asked(3)).toEqual(new Set(['diameter,width,height']));
});

test('D rivets come up at level 3', () => {
	const ofD = (level: Level) =>
		manyTasks(shopHeadTasks, level).some(({ method }) => /-d-/.test(method.id));
	expect(levels.map(ofD)).toEqual([false, false, true]);
});

test('older numbers come up at level 3', () => {
	const older = (level: Level) =>
		manyTasks(shopHeadTasks, level).some(({ drawn }) => /^AN/.test(String(drawn.given.number)));
	expect(levels.map(older)).toEqual([false, false, true]);
});
