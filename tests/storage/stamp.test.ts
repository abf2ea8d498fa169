import { describe, expect, test } from 'vitest';
import { type Attempt, readEvent } from '../../src/lib/engine/schedule/event.ts';
import { localDay } from '../../src/lib/storage/local-day.ts';
import { stamped } from '../../src/lib/storage/stamp.ts';
import { attempt, sam } from './event-arbitrary.ts';

const facts = asDone(attempt());

/** An attempt before it is stamped. */
function asDone({ type, task, runId, source, typed, verdicts, opened, ...rest }: Attempt) {
	const { byStep, worked, seconds, skills, givens } = rest;
	const entered = { typed, verdicts, opened, byStep, worked, seconds, skills };
	return { type, task, runId, source, givens, ...entered };
}

describe('what a learner just did', () => {
	test('becomes an event of that learner, time and day', () => {
		const now = new Date(2026, 2, 9, 23, 59, 59, 999);
		const event = stamped(sam, facts, now);
		expect(event).toEqual({
			...facts,
			id: event.id,
			v: 1,
			learner: sam,
			at: now.getTime(),
			day: '2026-03-09'
		});
		expect(readEvent(event).ok).toBe(true);
	});

	test('has an id of its own each time', () => {
		const naming = { type: 'learner', nickname: 'Sam' } as const;
		const ids = Array.from({ length: 100 }, () => stamped(sam, naming).id);
		expect(new Set(ids).size).toBe(100);
	});

	test('is kept even when it is out of the limits or has a field left open', () => {
		const typed = { length: 'x'.repeat(999) };
		const event = stamped(sam, { ...facts, typed, seconds: 1e9, level: undefined });
		expect(event).toMatchObject({ typed: { length: 'x'.repeat(300) }, seconds: 86_400 });
		expect(Object.keys(event)).not.toContain('level');
		expect(readEvent(event).ok).toBe(true);
	});

	test('a clock set back during the task gives no negative time', () => {
		expect(stamped(sam, { ...facts, seconds: -5 }).seconds).toBe(0);
	});
});

test.each([
	[new Date(2026, 0, 1, 0, 0), '2026-01-01'],
	[new Date(2026, 11, 31, 23, 59), '2026-12-31'],
	[new Date(2024, 1, 29, 12, 0), '2024-02-29']
])('the day of %s is %s', (time, day) => {
	expect(localDay(time)).toBe(day);
});
