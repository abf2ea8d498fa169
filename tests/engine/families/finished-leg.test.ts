import { expect, test } from 'vitest';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { bendTasks, expectDrawn, expectEveryBend, expectStocked, partOf } from './bend-draws.ts';
import { familyOf } from './family-of.ts';
import { givenAt, slipsNamed } from './many-tasks.ts';

const tasks = bendTasks(await familyOf('finished-leg'));

test('sheets, bars and figures of many tasks', () => {
	for (const task of tasks) {
		expectStocked(task);
		expectDrawn(task, []);
	}
});

test.each(levels)('at level %i, 60 tasks or more are unlike', (level) => {
	const own = tasks.filter(({ id }) => id.level === level);
	expect(new Set(own.map(({ drawn }) => JSON.stringify(drawn.given))).size).toBeGreaterThan(60);
	expect(own.every(({ drawn }) => (drawn.given.angle === 90) === (level === 1))).toBe(true);
});

test('the setback left out and taken off are told by name', () => {
	for (const task of tasks) {
		const flat = givenAt(task, 'tangentLine');
		const setback = Number(task.right.setback);
		expect(task.right.leg, task.number).toBeCloseTo(flat + setback, 9);
		expect(slipsNamed(task, 'leg', flat), task.number).toContain('moldLines');
		expect(slipsNamed(task, 'leg', flat - setback), task.number).toContain('added');
	}
});

test('nearly every task tells the allowance taken for the setback', () => {
	const told = tasks.filter((task) => {
		const [flat, R, T, angle] = ['tangentLine', 'R', 'T', 'angle'].map((key) => givenAt(task, key));
		const allowance = (0.01743 * (R ?? NaN) + 0.0078 * (T ?? NaN)) * (angle ?? NaN);
		return slipsNamed(task, 'leg', (flat ?? NaN) + allowance).includes('allowance');
	});
	expect(told.length / tasks.length).toBeGreaterThan(0.8);
});

test('K taken times R alone is never right where the setback is asked for, and often told where not', () => {
	const [second, third] = ([2, 3] as const).map((level) =>
		tasks.filter(({ id }) => id.level === level)
	);
	expect(partOf(third ?? [], ({ slips }) => slips.has('brackets'))).toBe(1);
	expect(partOf(second ?? [], ({ slips }) => slips.has('brackets'))).toBeGreaterThan(0.35);
	expect(partOf(second ?? [], ({ slips }) => slips.has('noT'))).toBeGreaterThan(0.6);
});

test('every bend is drawn, and thin sheet is', () => {
	expectEveryBend(tasks, 2, [30, 45, 60, 75, 80]);
	expectEveryBend(tasks, 3, [30, 45, 60, 75, 80, 100, 105, 120, 135]);
	const second = tasks.filter(({ id }) => id.level === 2);
	expect(partOf(second, ({ drawn }) => Number(drawn.given.T) <= 0.05)).toBeGreaterThan(0.5);
});

test('past square no leg is told to reach over a row of holes, and ribs and clips are thin', () => {
	for (const { number, drawn } of tasks) {
		const { angle, T } = drawn.given;
		if (/reach over/.test(drawn.story)) expect(angle, number).toBeLessThanOrEqual(90);
		if (/rib|clip/.test(drawn.story)) expect(T, number).toBeLessThanOrEqual(0.05);
	}
});
