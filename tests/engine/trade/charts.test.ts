import { describe, expect, test } from 'vitest';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import { chartsOf } from '../../../src/lib/engine/tasks/charts-of.ts';
import { loadFamily } from '../../../src/lib/engine/families/catalogue.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { charts } from '../../../src/lib/engine/trade/charts.ts';
import { rules } from '../../../src/lib/engine/trade/rules.ts';
import { findIn } from '../../../src/lib/engine/trade/table/find-in.ts';
import { cellAt } from '../../../src/lib/engine/trade/table/reading.ts';
import { tables } from '../../../src/lib/engine/trade/tables.ts';
import { decimalEquivalents } from '../../../src/lib/engine/trade/tables/decimal-equivalents.ts';
import { dashNumbers } from '../../../src/lib/engine/trade/tables/rivet-dashes.ts';

test('every table hangs on the wall once, and leads from rules that there are', () => {
	const byId = (ids: readonly { id: string }[]) => ids.map(({ id }) => id).sort();
	expect(byId(charts.map(({ table }) => table))).toEqual(byId(tables));
	for (const rule of charts.flatMap((chart) => chart.rules)) expect(rules).toHaveProperty([rule]);
});

describe('a search', () => {
	/** Charts that a search leaves, with the cells that it leaves of each. */
	function found(search: string) {
		return Object.fromEntries(
			charts.flatMap(({ name, table }) => {
				const left = findIn(table, search, name);
				const cells = left?.rows.flatMap((row) =>
					left.columns.map((column) => {
						const cell = table.cells[row]?.[column] ?? null;
						return cell === null ? '' : (table.holds[column]?.write(cell) ?? '');
					})
				);
				return cells ? [[table.id, cells]] : [];
			})
		);
	}

	test.each([
		['2024-t3 .063', { 'least-radius': ['0.22'] }],
		['No. 30', { 'drill-chart': ['0.1285'] }],
		['#30 ', { 'drill-chart': ['0.1285'] }],
		['densit 5052', { densities: ['0.097'] }],
		['27/64', { 'decimal-equivalents': ['0.421875', '10.7156'] }],
		['10.7156', { 'decimal-equivalents': ['0.421875', '10.7156'] }],
		['4-80 2', { 'rivet-pitches': ['4', '4.5'] }],
		['nothing', {}]
	])('%s', (search, left) => {
		expect(found(search)).toMatchObject(left);
		if (Object.keys(left).length === 0) expect(found(search)).toEqual({});
	});

	test('leaves everything when it is empty', () => {
		for (const { table } of charts) {
			const { rows, columns } = findIn(table, ' ') ?? {};
			expect([rows?.length, columns?.length]).toEqual([
				table.rows.keys.length,
				table.columns.keys.length
			]);
		}
	});
});

test('decimals of 64ths and dash numbers by long division', () => {
	for (let n = 1; n <= 64; n++) {
		expect(cellAt(decimalEquivalents, n - 1, 0)).toBe((n * 15_625) / 1e6);
		const tenThousandths = Number((BigInt(n) * 3_968_750n + 500n) / 1000n);
		expect(cellAt(decimalEquivalents, n - 1, 1)).toBe(tenThousandths / 1e4);
	}
	// MS20470AD4-5: 1/8 in across, 5/16 in long.
	expect(cellAt(dashNumbers, dashNumbers.rows.placeOf(4), 0)).toBe(0.125);
	expect(cellAt(dashNumbers, dashNumbers.rows.placeOf(5), 1)).toBe(0.3125);
});

test.each([
	['bend-allowance', 'allowance-90'],
	['setback', 'k-chart'],
	['sheet-weight', 'densities'],
	['drill-size', 'drill-chart'],
	['rivet-row', 'rivet-pitches'],
	['rivets-each-side', 'rivets-per-inch'],
	['rivet-length', 'decimal-equivalents'],
	['rivet-number', 'rivet-heads']
])('a task of %s has its chart in front, and all others behind', async (family, front) => {
	const card = cards.find(({ id }) => id === family);
	if (!card) throw new Error(`there is no family ${family}`);
	const order = chartsOf(drawTask(await loadFamily(card), 1, 7));
	expect(order[0]?.table.id).toBe(front);
	expect(new Set(order)).toEqual(new Set(charts));
	expect(order).toHaveLength(charts.length);
});
