import { expect, test } from 'vitest';
import { effectOf } from '../../../src/lib/engine/tasks/effect.ts';
import { bendTasks, expectDrawn, expectStocked } from './bend-draws.ts';
import { familyOf } from './family-of.ts';

const developedWidthTasks = await familyOf('developed-width');

const tasks = bendTasks(developedWidthTasks);

function list(value: unknown): readonly number[] {
	if (!Array.isArray(value)) throw new Error('not a list');
	return value.map(Number);
}

test('sheets, bars and drawings of many tasks', () => {
	for (const task of tasks) {
		expectStocked(task);
		expectDrawn(task, ['flats', 'allowances', 'width']);
	}
});

test('legs are in sixteenths, one more than bends, each with a label', () => {
	for (const { drawn } of tasks) {
		const legs = list(drawn.given.legs);
		expect(legs).toHaveLength(list(drawn.given.angles).length + 1);
		for (const leg of legs) expect(Number.isInteger(leg * 16)).toBe(true);
		expect(drawn.labels?.legs).toHaveLength(legs.length);
		expect(drawn.labels?.angles).toHaveLength(legs.length - 1);
	}
});

test('level 1 is an angle, level 2 a channel or a Z, level 3 a hat or a bend that is not square', () => {
	for (const { id, drawn } of tasks) {
		const legs = list(drawn.given.legs);
		const square = list(drawn.given.angles).every((angle) => angle === 90);
		if (id.level === 1) expect([legs.length, square]).toEqual([2, true]);
		if (id.level === 2) expect([legs.length, square]).toEqual([3, true]);
		if (id.level === 3) expect(legs.length === 5).toBe(square);
	}
	const pairs = tasks.filter(({ id }) => id.level === 2).map(({ drawn }) => list(drawn.given.legs));
	expect(pairs.some(([a, , b]) => a === b) && pairs.some(([a, , b]) => a !== b)).toBe(true);
});

test('mold lines added up leave the last leg too long; the number of values must fit to be drawn', () => {
	const task = tasks[0];
	if (!task) throw new Error('no task');
	const { given } = task.drawn;
	const sum = list(given.legs).reduce((total, leg) => total + leg, 0);
	expect(effectOf(task, 'width', sum)?.entered.says).toMatch(
		/^Bent up, the last leg comes out .* too long[.]$/
	);
	expect(effectOf(task, 'flats', list(given.legs))?.entered.says).toMatch(
		/^Bent up, leg [12] comes out .* too long, and no other leg is off by more[.]$/
	);
	expect(effectOf(task, 'flats', [1])).toBeNull();
	expect(effectOf(task, 'allowances', [])).toBeNull();
	expect(effectOf(task, 'K', [1])).toBeNull();
});
