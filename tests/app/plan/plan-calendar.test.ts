import { expect, test } from 'vitest';
import { planEntries } from '../../../src/lib/app/plan/plan-calendar.ts';
import { dayOf, isoOf } from '../../../src/lib/engine/schedule/day.ts';
import type { Forecast } from '../../../src/lib/engine/schedule/forecast.ts';

const today = dayOf('2026-11-25');
const exam = dayOf('2026-12-11');
const forecast: Forecast = {
	until: exam,
	days: [
		{ day: today, phase: 'build', tasks: 8, minutes: 22.3 },
		{ day: today + 1, phase: 'build', tasks: 0, minutes: 0 },
		{ day: exam - 1, phase: 'sweep', tasks: 1, minutes: 2.4 }
	],
	all: { today: 0.4, then: 0.8, metThen: 1, steps: 1 },
	topics: [],
	kindsOn: new Map(),
	comesUp: new Map(),
	weakest: [],
	missed: [
		{ skill: 'a/K', recall: 0.3, nextDay: today + 2 },
		{ skill: 'a/pitch', recall: 0.3, nextDay: today },
		{ skill: 'b/K', recall: 0.4, nextDay: today + 2 },
		{ skill: 'b/length', recall: 0.4, nextDay: today + 2 },
		{ skill: 'b/flat', recall: 0.5, nextDay: null }
	],
	unreached: []
};
const label = (skill: string) => skill.replace(/^./, '').slice(1);
const entries = (change: Partial<Parameters<typeof planEntries>[0]> = {}) =>
	planEntries({ learner: 'me', forecast, exam, label, ...change });

test('every day with tasks, the due days of what was missed, and the exam', () => {
	expect(entries().map(({ day, summary }) => `${isoOf(day)} ${summary}`)).toEqual([
		'2026-11-25 Sheet metal practice: 8 tasks, about 22 minutes',
		'2026-12-10 Sheet metal practice: 1 task, about 2 minutes',
		'2026-11-25 Due again: pitch',
		'2026-11-27 Due again: K, length',
		'2026-12-11 Exam'
	]);
	expect(entries()[1]?.description).toBe('A last look over what you know before the exam.');
});

test('ids differ within a calendar, stay the same in the next, and belong to one learner', () => {
	const ids = entries().map(({ uid }) => uid);
	expect(new Set(ids).size).toBe(ids.length);
	const days = forecast.days.map((day) => ({ ...day, tasks: day.tasks + 3, minutes: 40 }));
	const again = entries({ forecast: { ...forecast, days } }).map(({ uid }) => uid);
	expect(again).toEqual(expect.arrayContaining(ids));
	const other = entries({ learner: 'you' }).map(({ uid }) => uid);
	expect(ids.filter((uid) => other.includes(uid))).toEqual([]);
});

test('practice has a time of day when one is wished for; due days and the exam have none', () => {
	const times = entries({ start: 1110 }).map(({ time }) => time);
	expect(times).toEqual([
		{ start: 1110, minutes: 22 },
		{ start: 1110, minutes: 2 },
		undefined,
		undefined,
		undefined
	]);
	expect(entries().every(({ time }) => time === undefined)).toBe(true);
});

test('without an exam there is none', () => {
	expect(entries({ exam: null }).some(({ summary }) => summary === 'Exam')).toBe(false);
});
