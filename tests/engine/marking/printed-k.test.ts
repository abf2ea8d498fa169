import { expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { entryOf, readAnswer } from '../../../src/lib/engine/marking/answer.ts';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { cellAt, suspectAt } from '../../../src/lib/engine/trade/table/reading.ts';
import { kChart } from '../../../src/lib/engine/trade/tables/k-chart.ts';

await loadReader();
const families = await loadFamilies();

/** From here on the chart prints two places only, which is coarser than K is held to. */
const coarseFrom = 10;

/** Every row that can be asked for as it is printed, and how it is marked. */
function printedRows() {
	const family = families.find(({ id }) => id === 'setback');
	if (!family) throw new Error('the family of setbacks is gone');
	return kChart.rows.keys.flatMap(([angle = NaN], row) => {
		if (angle === 90 || suspectAt(kChart, row, 0)) return [];
		const k = cellAt(kChart, row, 0);
		if (k >= coarseFrom) return [];
		const text = kChart.holds[0]?.write(k) ?? '';
		const given = { R: 1 / 8, T: 0.04, angle };
		const draw = () => ({ given, story: '', question: '', asked: ['K'], cautions: [] });
		const task = drawTask({ ...family, draw }, 1, 1);
		const entry = entryOf(readAnswer(task.method, 'K', text, 'in'));
		return [[angle, text, entry && mark(task, { K: entry }).K?.kind] as const];
	});
}

test('K as the chart prints it is accepted for every angle', () => {
	const rows = printedRows();
	expect(rows.length).toBe(166);
	expect(rows.filter(([, , kind]) => kind !== 'accept')).toEqual([]);
});

test('no task asks for a K that the chart prints coarser', () => {
	const bends = families.filter(({ topic }) => topic === 'bends');
	for (const family of bends) {
		for (let seed = 0; seed < 60; seed++) {
			const { K = 1 } = drawTask(family, 3, seed * 3491).right;
			expect(Math.max(...[K].flat().map(Number)), family.id).toBeLessThan(coarseFrom);
		}
	}
});
