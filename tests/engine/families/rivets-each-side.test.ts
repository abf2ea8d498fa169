import { describe, expect, test } from 'vitest';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { differs } from '../../../src/lib/engine/solver/tolerance.ts';
import { rivetDashes, sheetThicknesses } from '../../../src/lib/engine/trade/stock.ts';
import { drawingFaults } from './drawing-faults.ts';
import { familyOf } from './family-of.ts';
import { manyTasks } from './many-tasks.ts';

const family = await familyOf('rivets-each-side');

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(family, level);

	test('sheet and rivets are stocked', () => {
		for (const { drawn } of tasks) {
			expect(sheetThicknesses).toContain(drawn.given.T);
			expect(rivetDashes).toContain(Number(drawn.given.D) * 32);
		}
	});

	test('three slips or more lead to another answer', () => {
		for (const { number, drawn, method, right, slips } of tasks) {
			for (const key of drawn.asked) {
				const others = [...slips.values()].filter((values) => differs(method, key, right, values));
				const answers = new Set(others.map((values) => values[key]));
				expect(answers.size, `${number} ${key}`).toBeGreaterThanOrEqual(3);
			}
		}
	});

	test('the figure can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
	});
});
