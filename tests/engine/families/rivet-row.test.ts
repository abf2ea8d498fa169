import { expect, test } from 'vitest';
import type { Outcome } from '../../../src/lib/engine/families/family.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { allTasks, givenAt, manyTasks, outcomeOf, sizeOf } from './many-tasks.ts';
import { circlesIn } from './circles.ts';
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

/** Where the holes of an outcome are drawn along the strip, 380 units long, and in what line. */
function holesIn(outcome: Outcome | null): { at: number[]; lines: string[] } {
	const holes = circlesIn(outcome);
	return { at: holes.map(({ x }) => x), lines: [...new Set(holes.map(({ line }) => line))] };
}

const drawn = (inches: number) => expect.closeTo((inches / length) * 380, 1) as number;

test('the right row is drawn hole by hole', () => {
	const wanted = { at: (positions as readonly number[]).map(drawn), lines: ['edge'] };
	expect(holesIn(outcomeOf(task, 'positions', positions ?? []))).toEqual(wanted);
	expect(holesIn(outcomeOf(task, 'pitch', pitch ?? 0))).toEqual(wanted);
	expect(holesIn(outcomeOf(task, 'count', count ?? 0))).toEqual(wanted);
	expect(holesIn(outcomeOf(task, 'spaces', Number(count) - 1))).toEqual(wanted);
});

test('a row that does not hold is drawn as a slip, where it was put', () => {
	const fewer = [margin, length / 2, length - margin];
	const wanted = { at: fewer.map(drawn), lines: ['slip'] };
	expect(holesIn(outcomeOf(task, 'positions', fewer))).toEqual(wanted);
	expect(holesIn(outcomeOf(task, 'count', 3))).toEqual(wanted);
	const more = holesIn(outcomeOf(task, 'count', Number(count) + 1));
	expect(more).toMatchObject({ at: { length: Number(count) + 1 }, lines: ['slip'] });
});

test('a pitch far too long keeps on its sheet', () => {
	const outcome = outcomeOf(task, 'pitch', length);
	expect(outcome && sizeOf(outcome).width).toBeLessThan(480);
});

test.each([0, 1, 2.5, -3])('%d rivets are told to be no row, without a hole', (entered) => {
	expect(holesIn(outcomeOf(task, 'count', entered)).at).toEqual([]);
	expect(outcomeOf(task, 'count', entered)?.says).toContain('two rivets or more');
});

test('no row at all, and one of too many holes, are not drawn', () => {
	expect(outcomeOf(task, 'positions', [])).toBeNull();
	expect(outcomeOf(task, 'count', 1e6)).toBeNull();
});
