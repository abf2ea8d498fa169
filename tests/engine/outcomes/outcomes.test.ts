import { describe, expect, test } from 'vitest';
import { loadMethods } from '../../../src/lib/engine/families/catalogue.ts';
import type { Method } from '../../../src/lib/engine/solver/method.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { seenAt } from '../../../src/lib/engine/solver/outcome.ts';
import type { OutcomeRow } from './outcome-row.ts';

/*
 * Every sentence that tells what an answer does to the metal, against rows worked by hand: one
 * file of rows a method, named after it.
 */

const files = import.meta.glob<{ rows: readonly OutcomeRow[] }>('./*.rows.ts');
const methods = await loadMethods();
const rowsOf = new Map<string, readonly OutcomeRow[]>();
for (const [path, load] of Object.entries(files)) {
	rowsOf.set(path.replace(/^\.\/(.+)\.rows\.ts$/, '$1'), (await load()).rows);
}

test('every file of rows is named after a method that tells outcomes', () => {
	const telling = methods.filter(({ outcomes }) => outcomes.length > 0).map(({ id }) => id);
	expect([...rowsOf.keys()].filter((id) => !telling.includes(id))).toEqual([]);
});

test('every case of every outcome has a row', () => {
	expect(methods.flatMap(casesWithoutRow)).toEqual([]);
});

describe.each(methods.map((method) => [method.id, method] as const))('%s', (id, method) => {
	const rows = rowsOf.get(id) ?? [];

	test.each(rows)('$key $entered: $case', ({ given, key, entered, case: wanted, says }) => {
		const seen = seenAt(method, given, evaluate(method, given), key, entered);
		expect([seen?.case, seen?.says]).toEqual([wanted, says]);
		expect(says).toMatch(/^[A-Z0-9−].*\.$/);
	});

	// A method may tell nothing; a suite must hold a test.
	test('tells each step once', () => {
		const keys = method.outcomes.flatMap(({ at }) => at);
		expect(keys).toEqual([...new Set(keys)]);
	});
});

/** A line for every case that no row comes to. */
function casesWithoutRow({ id, outcomes }: Method): string[] {
	const rows = rowsOf.get(id) ?? [];
	// What a joined method has from its parts has rows with them.
	const own = outcomes.filter(({ from }) => from.unit === id);
	return own.flatMap(({ at, cases }) =>
		Object.keys(cases)
			.filter((one) => !rows.some((row) => at.includes(row.key) && row.case === one))
			.map(
				(one) =>
					`${id}, step ${at.join(', ')}: no row comes to the case ${one}; add one to tests/engine/outcomes/${id}.rows.ts`
			)
	);
}
