import { expect, test } from 'vitest';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { allTasks, givenAt, manyTasks, outcomeOf, sizeOf, slipsNamed } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const barPiecesTasks = await familyOf('bar-pieces');

test('bars are whole feet, pieces whole 64ths, kerfs those of a saw', () => {
	for (const task of allTasks(barPiecesTasks)) {
		expect(givenAt(task, 'bar') % 12).toBe(0);
		expect(Number.isInteger(givenAt(task, 'piece') * 64)).toBe(true);
		expect([2, 3, 4, 5, 6, 8]).toContain(givenAt(task, 'kerf') * 64);
	}
});

test('at the third level the bar is a whole number of pieces, and the kerfs cost some', () => {
	for (const task of manyTasks(barPiecesTasks, 3)) {
		const parts = givenAt(task, 'bar') / givenAt(task, 'piece');
		expect(Number.isInteger(parts)).toBe(true);
		expect(slipsNamed(task, 'count', parts)).toContain('noKerf');
	}
});

test('kerfs missing from the remnant are named', () => {
	for (const task of manyTasks(barPiecesTasks, 2)) {
		const { count } = task.right;
		const kept = givenAt(task, 'bar') - Number(count) * givenAt(task, 'piece');
		expect(slipsNamed(task, 'remnant', kept)).toContain('chipsKept');
	}
});

const task = drawTask(barPiecesTasks, 2, 7);
const count = Number(task.right.count);
const remnant = Number(task.right.remnant);

test.each([
	{ key: 'count', entered: 0, says: 'enough for another piece' },
	{ key: 'count', entered: -4, says: 'enough for another piece' },
	{ key: 'count', entered: count - 1, says: 'enough for another piece' },
	{ key: 'count', entered: count, says: 'too short for another piece' },
	{ key: 'count', entered: count + 1, says: 'more bar than there is' },
	{ key: 'count', entered: 1e6, says: 'more bar than there is' },
	{ key: 'remnant', entered: remnant, says: 'is left after' },
	{ key: 'remnant', entered: remnant + 1, says: 'is more than the saw leaves' },
	{ key: 'remnant', entered: -1, says: 'less than the saw leaves' },
	{ key: 'remnant', entered: 1e6, says: 'more than the saw leaves' }
])('$key $entered: $says', ({ key, entered, says }) => {
	const outcome = outcomeOf(task, key, entered);
	expect(outcome?.says).toContain(says);
	if (outcome) expect(sizeOf(outcome).width).toBeLessThan(820);
});
