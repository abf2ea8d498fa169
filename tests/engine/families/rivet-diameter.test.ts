import { describe, expect, test } from 'vitest';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { rivetDashes, sheetThicknesses } from '../../../src/lib/engine/trade/stock.ts';
import { drawingFaults } from './drawing-faults.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const rivetDiameterTasks = await familyOf('rivet-diameter');

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(rivetDiameterTasks, level);

	test('the sheet can be had, by the inch or by the millimetre, and its rivet is stocked', () => {
		for (const { drawn, right } of tasks) {
			const T = Number(drawn.given.thickest);
			const byInch = [...sheetThicknesses, 0.036, 0.051, 0.081].some((size) => size === T);
			const byMm = Math.abs(T * 254 - Math.round(T * 254)) < 1e-9;
			expect(byInch || (byMm && level > 1), String(T)).toBe(true);
			expect(drawn.told?.some(([label]) => label === 'Sold as')).toBe(!byInch);
			expect(rivetDashes).toContain(Number(right.diameter) * 32);
		}
	});

	test('figures and effects can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
		expect(tasks.every((task) => outcomeOf(task, 'diameter', task.right.diameter ?? 0))).toBe(true);
	});
});

test('a sheet whose rivet comes out under 3/32 in is drawn', () => {
	const thin = manyTasks(rivetDiameterTasks, 2).filter(
		({ right }) => Number(right.threeT) < 3 / 32
	);
	expect(thin.length).toBeGreaterThan(0);
	for (const { right } of thin) expect(right.diameter).toBe(3 / 32);
});
