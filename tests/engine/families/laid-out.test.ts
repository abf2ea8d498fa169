import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import { ratio } from '../../../src/lib/engine/quantity/exact.ts';
import { isList } from '../../../src/lib/engine/quantity/value.ts';
import type { Task } from '../../../src/lib/engine/tasks/task.ts';
import { howMany } from './how-many.ts';
import { allTasks } from './many-tasks.ts';

/*
 * What is marked out with a scale: the right value, read on a rule with 64ths, is accepted. Those of
 * a pitch stay finer, since their error adds up along the row, and so do the allowances.
 */

const laidOut: Readonly<Record<string, readonly string[]>> = {
	'sight-line': ['tangentLine', 'sightLine'],
	'finished-leg': ['leg'],
	'developed-width': ['flats', 'width'],
	'edge-distance': ['least', 'preferred', 'greatest'],
	'lap-width': ['edge', 'rowsApart', 'width'],
	'rivet-row': ['positions'],
	'blank-size': ['blankLength', 'blankWidth'],
	'bar-pieces': ['used', 'remnant']
};

const families = (await loadFamilies()).filter(({ id }) => Object.hasOwn(laidOut, id));

/** The right value to the nearest 1/64 in, as it is typed off a rule. */
function onRule({ right }: Task, key: string) {
	const nearest = (one: number | string) => ratio(BigInt(Math.round(Number(one) * 64)), 64n);
	const value = right[key] ?? '';
	return isList(value) ? value.map(nearest) : nearest(Number(value));
}

test('every family named here is there', () => {
	expect(families.map(({ id }) => id).sort()).toEqual(Object.keys(laidOut).sort());
});

describe.each(families.map((family) => [family.id, family] as const))('%s', (id, family) => {
	const tasks = allTasks(family);

	test.each(laidOut[id] ?? [])('%s off a rule with 64ths', (key) => {
		const asking = tasks.filter(({ drawn }) => drawn.asked.includes(key));
		expect(asking.length).toBeGreaterThan(howMany / 4);
		const refused = asking.filter((task) => {
			const verdict = mark(task, { [key]: { value: onRule(task, key), grain: 0 } })[key];
			return verdict?.kind !== 'accept';
		});
		expect(refused.map(({ number }) => number)).toEqual([]);
	});
});
