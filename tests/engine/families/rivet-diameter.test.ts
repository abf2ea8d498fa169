import { describe, expect, test } from 'vitest';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { rivetDashes, sheetThicknesses } from '../../../src/lib/engine/trade/stock.ts';
import { drawingFaults } from './drawing-faults.ts';
import { howMany } from './how-many.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const rivetDiameterTasks = await familyOf('rivet-diameter');

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(rivetDiameterTasks, level);

	test('the sheet can be had, by the inch or by the millimetre, and its rivet is stocked', () => {
		for (const { drawn, right } of tasks) {
			const T = Number(drawn.given.thickest);
			const byInch = [...sheetThicknesses, 0.036, 0.051, 0.064, 0.072, 0.081].some(
				(size) => size === T
			);
			const byMm = Math.abs(T * 254 - Math.round(T * 254)) < 1e-9;
			expect(byInch || (byMm && level > 1), String(T)).toBe(true);
			expect(drawn.told?.some(([label]) => label === 'Sold as')).toBe(!byInch);
			for (const key of drawn.asked.filter((one) => one !== 'threeT')) {
				expect(rivetDashes).toContain(Number(right[key]) * 32);
			}
		}
	});

	test('figures and effects can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
		for (const task of tasks) {
			const rivets = task.drawn.asked.filter((key) => key !== 'threeT');
			expect(rivets.every((key) => outcomeOf(task, key, task.right[key] ?? 0))).toBe(true);
		}
	});
});

test('two angles are of sheet that is bent to an angle', () => {
	const angles = levels
		.flatMap((level) => manyTasks(rivetDiameterTasks, level))
		.filter(({ drawn }) => drawn.story.includes('Two angles'));
	expect(angles.length).toBeGreaterThan(5);
	for (const { number, drawn } of angles) {
		const sheet = drawn.told?.find(([label]) => label === 'Sheet')?.[1];
		expect(sheet, number).not.toMatch(/7075|2014/);
	}
});

test('a sheet whose rivet comes out under 3/32 in is drawn', () => {
	const thin = manyTasks(rivetDiameterTasks, 2).filter(
		({ right }) => Number(right.threeT) < 3 / 32
	);
	expect(thin.length).toBeGreaterThan(0);
	for (const { right } of thin) expect(right.diameter).toBe(3 / 32);
});

test('sheets above which no 7/32 in is stocked come up at level 3, with the rivet wanted told', () => {
	const asked = manyTasks(rivetDiameterTasks, 3);
	expect(asked.every(({ drawn }) => drawn.asked.includes('inRange'))).toBe(true);
	expect(new Set(asked.map(({ right }) => right.inRange)).size).toBe(4);
	const between = asked.filter(({ right }) => Number(right.threeT) > 3 / 16);
	expect(between.length).toBeGreaterThan(howMany / 20);
	expect(asked.length).toBeGreaterThan(between.length);
	for (const { right } of between) expect([right.inRange, right.above]).toEqual([3 / 16, 1 / 4]);
});
