import { expect, test } from 'vitest';
import { sheetThicknesses, stockSheets } from '../../../src/lib/engine/trade/stock.ts';
import { densities, density } from '../../../src/lib/engine/trade/tables/densities.ts';
import { allTasks, givenAt, manyTasks, slipsNamed } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const sheetWeightTasks = await familyOf('sheet-weight');

const alloyOf = (given: object) => (given as { alloy: string }).alloy;

test('a density from memory always stands on the task', () => {
	const alloys = new Set<string>();
	for (const { drawn } of allTasks(sheetWeightTasks)) {
		const base = alloyOf(drawn.given).split('-')[0] ?? '';
		alloys.add(base);
		const { standing } = densities.rowSources.get(base) ?? densities.source;
		const told = drawn.told?.find(([label]) => label === 'Density')?.[1];
		if (standing !== 'read') expect(told).toBeDefined();
		if (told) expect(parseFloat(told)).toBe(density.run(base));
	}
	expect(alloys.size).toBe(densities.rows.keys.length);
});

test('thicknesses are stocked, and at the first level the sheets', () => {
	const stocked: readonly number[] = sheetThicknesses;
	for (const task of allTasks(sheetWeightTasks)) expect(stocked).toContain(givenAt(task, 'T'));
	for (const task of manyTasks(sheetWeightTasks, 1)) {
		const [length, width] = [givenAt(task, 'length'), givenAt(task, 'width')];
		expect(stockSheets).toContainEqual({ length, width });
	}
});

test('feet for inches are named', () => {
	for (const task of manyTasks(sheetWeightTasks, 1)) {
		const weight = Number(task.right.weight);
		expect(slipsNamed(task, 'weight', weight / 12)).toEqual(['oneSideInFeet']);
		expect(slipsNamed(task, 'weight', weight / givenAt(task, 'T'))).toEqual(['noThickness']);
	}
});
