import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { chartExcerpt } from '../../../src/lib/engine/figures/parts/chart-excerpt.ts';
import { loadMethods } from '../../../src/lib/engine/families/catalogue.ts';
import type { Method } from '../../../src/lib/engine/solver/method.ts';
import { TradeError } from '../../../src/lib/engine/solver/trade-function.ts';
import { functionPlaces, functions } from '../../../src/lib/engine/trade/functions.ts';
import { excerpt } from '../../../src/lib/engine/trade/table/excerpt.ts';
import type { LookUp } from '../../../src/lib/engine/trade/table/look-up.ts';
import { misread } from '../../../src/lib/engine/trade/table/misread.ts';
import {
	type Misreading,
	misreadingsOf,
	misreadName
} from '../../../src/lib/engine/trade/table/misread-as.ts';
import { suspectAt } from '../../../src/lib/engine/trade/table/reading.ts';
import type { Cell, Table } from '../../../src/lib/engine/trade/table/table.ts';
import { tables } from '../../../src/lib/engine/trade/tables.ts';

/* Laws that hold for every table there is, whoever adds it. */

const lookUps = Object.values(functions).filter(
	(one): one is LookUp => 'find' in one && 'table' in one
);

const steps: Readonly<Partial<Record<Misreading, readonly [down: number, right: number]>>> = {
	above: [-1, 0],
	below: [1, 0],
	twoAbove: [-2, 0],
	twoBelow: [2, 0],
	left: [0, -1],
	right: [0, 1],
	twoLeft: [0, -2],
	twoRight: [0, 2],
	threeLeft: [0, -3],
	threeRight: [0, 3],
	aboveLeft: [-1, -1],
	aboveRight: [-1, 1],
	belowLeft: [1, -1],
	belowRight: [1, 1]
};

/** What may be read at a place, by the declaration alone; undefined where nothing may. */
function printedAt(table: Table, row: number, column: number): Cell | undefined {
	if (suspectAt(table, row, column)) return undefined;
	return table.cells[row]?.[column] ?? undefined;
}

/** What a function reads; undefined where it refuses. */
function readBy(run: (...keys: never[]) => unknown, keys: readonly unknown[]): unknown {
	try {
		return (run as (...keys: unknown[]) => unknown)(...keys);
	} catch (error) {
		if (!(error instanceof TradeError)) throw error;
		expect(error.message).toMatch(/^[A-Z].*\.$/);
		return undefined;
	}
}

/** Every place of the table that the look-up reaches, with the keys it is reached by. */
function placesOf({ table, takes, column }: LookUp) {
	const columns = column === null ? table.columns.keys.map((_, at) => at) : [column];
	return table.rows.keys.flatMap(([rowKey], row) =>
		columns.map((at) => {
			const columnKey = table.columns.keys[at]?.[0];
			const both =
				takes[0] === table.rows.kind.dimension.name ? [rowKey, columnKey] : [columnKey, rowKey];
			return { row, column: at, keys: column === null ? both : [rowKey] };
		})
	);
}

describe.each(tables.map((table) => ({ id: table.id, table })))('table $id', ({ table }) => {
	test('has a cell for every row and column', () => {
		expect(table.cells).toHaveLength(table.rows.keys.length);
		expect(table.holds).toHaveLength(table.columns.keys.length);
		for (const row of table.cells) expect(row).toHaveLength(table.columns.keys.length);
	});

	test('every key means its own row or column', () => {
		for (const axis of [table.rows, table.columns]) {
			axis.keys.forEach((keys, place) => {
				for (const key of keys) expect(axis.placeOf(key), String(key)).toBe(place);
			});
		}
		for (const { row, column } of table.suspect) {
			expect(table.rows.placeOf(row)).toBeGreaterThanOrEqual(0);
			expect(table.columns.placeOf(column)).toBeGreaterThanOrEqual(0);
		}
	});

	test('its excerpt has the wanted row, not always in one place, with rows on both sides', () => {
		const count = table.rows.keys.length;
		const places = table.rows.keys.map(([row = '']) => {
			const { rows } = excerpt(table, { row });
			const wanted = table.rows.placeOf(row);
			const at = rows.indexOf(wanted);
			expect(at).toBeGreaterThanOrEqual(0);
			if (wanted > 0) expect(at).toBeGreaterThan(0);
			if (wanted < count - 1) expect(at).toBeLessThan(rows.length - 1);
			return at;
		});
		if (count > 2) expect(new Set(places).size).toBeGreaterThan(2);
	});

	test('its excerpt shows nothing that is suspect', () => {
		for (const { row, column } of table.suspect) {
			const { shapes } = chartExcerpt(table, { row, column }, { rows: 1, columns: 1 });
			const lettered = shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
			expect(lettered.at(-1)).toBe('–');
		}
	});
});

describe.each(lookUps.map((lookUp) => ({ name: lookUp.name, lookUp })))('$name', ({ lookUp }) => {
	const { table } = lookUp;

	test('reads every cell that may be read, and refuses the others', () => {
		for (const { row, column, keys } of placesOf(lookUp)) {
			expect(readBy(lookUp.run, keys), keys.join(' ')).toBe(printedAt(table, row, column));
		}
	});

	test.each(misreadingsOf(lookUp))('misread %s', (misreading) => {
		const slipped = functions[misreadName(lookUp.name, misreading)];
		const [down, right] = steps[misreading] ?? [NaN, NaN];
		if (!slipped) throw new Error('no such misreading');
		expect(slipped).toMatchObject({ takes: lookUp.takes, gives: lookUp.gives });
		for (const { row, column, keys } of placesOf(lookUp)) {
			const wanted =
				misreading === 'between' ? undefined : printedAt(table, row + down, column + right);
			expect(readBy(slipped.run, keys), keys.join(' ')).toBe(wanted);
		}
		const { says } = misread(lookUp, 'x', { it: misreading }).it;
		expect(says).toMatch(/^[A-Z].*\.$/);
		const [part] = slipped.show([['<mi>x</mi>']]);
		expect(part).toMatch(/^<mtext>(a|one|two|three|between) .*<\/mtext>$/);
	});
});

test('every function is called in a formula; a table that none reads is only shown', async () => {
	const formulas = (await loadMethods()).flatMap(formulasOf).join(' ');
	const called = new Set(formulas.match(/\w+(?=\()/g));
	const unused = [...functionPlaces]
		.filter(([, { exported, misread }]) => misread === null && !isCalled(exported, called))
		.map(([name, { file }]) => `no formula calls ${name} of ${file}: remove it`);
	expect(unused).toEqual([]);
});

/** Whether a function is called as it is or misread. */
function isCalled(name: string, called: ReadonlySet<string>): boolean {
	return [...functionPlaces].some(([as, place]) => place.exported === name && called.has(as));
}

function formulasOf({ steps, slips, limits, outcomes }: Method): string[] {
	return [
		...[...Object.values(steps), ...Object.values(slips)].map(({ formula }) => formula),
		...limits.flatMap(({ value, bound }) => [value, bound]),
		...outcomes.flatMap(({ shows, cases }) => [
			...Object.values(shows).map(({ formula }) => formula),
			...Object.values(cases).map(({ when }) => when ?? '')
		])
	];
}

test('every file of tables is in the list of tables', async () => {
	const folder = new URL('../../../src/lib/engine/trade/tables/', import.meta.url);
	for (const name of readdirSync(folder).filter((one) => one !== 'index.ts')) {
		const module = (await import(new URL(name, folder).href)) as Record<string, unknown>;
		const own = Object.values(module).filter((one) => tables.some((table) => table === one));
		expect(own.length, `${name}: add it to tables/index.ts`).toBeGreaterThan(0);
	}
});
