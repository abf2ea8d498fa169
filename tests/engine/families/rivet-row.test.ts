import { expect, test } from 'vitest';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { allTasks, givenAt, manyTasks, outcomeOf, sizeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const rivetRowTasks = await familyOf('rivet-row');

test('margins and pitches are those of the rivets told', () => {
	for (const task of allTasks(rivetRowTasks)) {
		const told = task.drawn.told?.find(([label]) => label === 'Rivets')?.[1] ?? '';
		const D = Number(/^MS20470AD(\d)$/.exec(told)?.[1]) / 32;
		expect(givenAt(task, 'endMargin')).toBeGreaterThanOrEqual(2 * D);
		expect(givenAt(task, 'endMargin')).toBeLessThanOrEqual(4 * D);
		expect(givenAt(task, 'greatestPitch')).toBeGreaterThanOrEqual(4 * D);
		expect(givenAt(task, 'greatestPitch')).toBeLessThanOrEqual(8 * D);
		// No pitch worked out comes near the least of 3 D.
		expect(Number(task.right.pitch)).toBeGreaterThan(3 * D);
	}
});

test('lengths are whole eighths of an inch', () => {
	for (const task of allTasks(rivetRowTasks)) {
		expect(Number.isInteger(givenAt(task, 'length') * 8)).toBe(true);
	}
});

test('no more than nine holes are to be written down', () => {
	for (const task of manyTasks(rivetRowTasks, 3)) {
		expect(task.right.count).toBeLessThanOrEqual(9);
		expect(task.right.count).toBeGreaterThanOrEqual(4);
	}
});

const task = drawTask(rivetRowTasks, 3, 3);
const { count, pitch, positions } = task.right;
const margin = givenAt(task, 'endMargin');
const length = givenAt(task, 'length');

test('the right row ends an end margin from the far end', () => {
	const right = 'from the far end.';
	expect(outcomeOf(task, 'positions', positions ?? [])?.says).toMatch(right);
	expect(outcomeOf(task, 'pitch', pitch ?? 0)?.says).toMatch(right);
	expect(outcomeOf(task, 'count', count ?? 0)?.says).toContain('the fewest that keep within');
});

test('a pitch too long runs the last hole off the piece', () => {
	const outcome = outcomeOf(task, 'pitch', length);
	expect(outcome?.says).toContain('runs off the piece');
	if (outcome) expect(sizeOf(outcome).width).toBeLessThan(480);
});

test('a rivet too few leaves the spaces too wide, one too many is a hole more', () => {
	expect(outcomeOf(task, 'count', Number(count) - 1)?.says).toContain('wider than the greatest');
	expect(outcomeOf(task, 'count', Number(count) + 1)?.says).toContain('more holes than');
	const fewer = [margin, length / 2, length - margin];
	expect(outcomeOf(task, 'positions', fewer)?.says).toContain('wider than the greatest');
});

test.each([[], 0, 1, 2.5, -3, 1e6].map((entered) => [entered]))(
	'%j is no row to draw',
	(entered) => {
		const key = Array.isArray(entered) ? 'positions' : 'count';
		expect(outcomeOf(task, key, entered as number | number[])).toBeNull();
	}
);
