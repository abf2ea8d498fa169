import { fraction } from '../../../src/lib/engine/quantity/kinds.ts';
import { describe, expect, test } from 'vitest';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { normalPartNumber } from '../../../src/lib/engine/quantity/part-number.ts';
import { rivetDashes } from '../../../src/lib/engine/trade/stock.ts';
import { drawingFaults } from './drawing-faults.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const rivetNumberTasks = await familyOf('rivet-number');

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(rivetNumberTasks, level);

	test('rivets are stocked, longer than thick, and named in the normal form', () => {
		for (const { drawn, right } of tasks) {
			const [D, length] = [Number(drawn.given.D), Number(drawn.given.length)];
			expect(rivetDashes).toContain(D * 32);
			expect(length * 16).toBe(Math.round(length * 16));
			expect(length).toBeGreaterThan(D);
			expect(normalPartNumber(String(right.number))).toBe(right.number);
		}
	});

	test('2017 and 2024 are not drawn thinner than 5/32 in', () => {
		for (const { drawn } of tasks) {
			if (!['2017', '2024'].includes(String(drawn.given.alloy))) continue;
			expect(Number(drawn.given.D)).toBeGreaterThanOrEqual(5 / 32);
		}
	});

	test('the given sizes do not tell the dash numbers', () => {
		expect(rivetNumberTasks.method.given.D?.kind).toBe(fraction);
		expect(rivetNumberTasks.method.given.length?.kind).toBe(fraction);
	});

	test('figures and effects can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
		expect(tasks.every((task) => outcomeOf(task, 'number', task.right.number ?? 0))).toBe(true);
	});
});
