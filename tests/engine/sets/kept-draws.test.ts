import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import {
	drawsOf,
	questionFromDraw,
	readDraws,
	taskFromDraw
} from '../../../src/lib/engine/sets/kept-draws.ts';
import { questionFor } from '../../../src/lib/engine/sets/open-set.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';

const families = await loadFamilies();

/** What a task is to whoever works and marks it. */
function seen({ drawn, method, right, slips, number }: Task) {
	// Which slips it is about, and is to tell apart, matters only while it is drawn.
	const shown = { told: [], ...drawn, chief: undefined, apart: undefined, method: undefined };
	return { number, method: method.id, right, slips: [...slips], shown };
}

describe.each(families)('$name', (family) => {
	test.each(levels)('comes back from what was kept as it was drawn, level %i', (level) => {
		for (const seed of [3, 77_777]) {
			const task = drawTask(family, level, seed);
			const question = questionFor(task);
			const text = JSON.stringify(drawsOf([{ place: 1, task, marks: [], question }]));
			const [kept] = readDraws(JSON.parse(text));
			const again = kept && taskFromDraw(kept, family);
			expect(again && seen(again)).toEqual(seen(task));
			expect(again && questionFromDraw(again, kept)?.options).toEqual(question?.options ?? null);
		}
	});
});

test('what no longer fits its family is not taken', () => {
	const [family] = families;
	if (!family) throw new Error('no family');
	const task = drawTask(family, 1, 3);
	const [kept] = drawsOf([{ place: 1, task, marks: [], question: null }]);
	if (!kept) throw new Error('nothing kept');
	const takes = (change: object) => taskFromDraw({ ...kept, ...change }, family) !== null;
	expect(takes({})).toBe(true);
	expect(takes({ method: 'gone' })).toBe(false);
	expect(takes({ asked: ['gone'] })).toBe(false);
	expect(takes({ given: {} })).toBe(false);
	expect(takes({ number: 'no number' })).toBe(false);
	for (const other of families.filter(({ code }) => code !== family.code)) {
		expect(taskFromDraw(kept, other)).toBeNull();
	}
	expect(readDraws([{ ...kept, given: { D: { deep: 1 } } }])).toEqual([]);
	expect(readDraws('nonsense')).toEqual([]);
});
