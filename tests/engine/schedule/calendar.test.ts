import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	type Course,
	isOff,
	portionOn,
	portions,
	studyDays,
	weekday
} from '../../../src/lib/engine/schedule/calendar.ts';
import { SHIPPED } from '../../../src/lib/engine/schedule/policy.ts';
import { monday, someCourse } from './plan-arbitrary.ts';

const always = { weekdays: [], dates: [] };
const course = (numbers: Partial<Course>): Course => ({
	start: monday,
	exam: monday + 42,
	minutes: 20,
	off: always,
	...numbers
});
const taskSeconds = fc.integer({ min: 20, max: 400 });
const halfLeft = course({
	start: 20_491,
	exam: 20_525,
	minutes: 5,
	off: { weekdays: [0], dates: [] }
});

describe('days of the week', () => {
	// 1 January 1970 was a Thursday, 9 March 2026 (day 20521) a Monday, 31 December 1969 a Wednesday
	test.each([
		{ day: 0, is: 4 },
		{ day: 20_521, is: 1 },
		{ day: 20_527, is: 0 },
		{ day: -1, is: 3 }
	])('day $day is weekday $is', ({ day, is }) => expect(weekday(day)).toBe(is));
});

test('study days leave out weekdays, single dates and the exam day', () => {
	const off = { weekdays: [0, 6], dates: [monday + 2] };
	expect(studyDays(off, monday, monday + 8)).toEqual([0, 1, 3, 4, 7].map((d) => monday + d));
});

describe('portions', () => {
	test('keep a quarter of the time for the last three days', () => {
		// 24 days of 8 tasks: 48 tasks on the last three, 144 on the others
		const all = portions(course({ exam: monday + 24, minutes: 8 }), 60);
		const sweep = all.filter((p) => p.phase === 'sweep');
		expect(sweep.map((p) => p.seconds / 60)).toEqual([16, 16, 16]);
		expect(all.slice(0, 21).reduce((sum, p) => sum + p.seconds / 60, 0)).toBe(144);
	});

	test('keep fewer days in a short course and none in the shortest', () => {
		const sweepDays = (days: number) =>
			portions(course({ exam: monday + days }), 60).filter((p) => p.phase === 'sweep').length;
		expect([3, 4, 8, 11, 12, 40].map(sweepDays)).toEqual([0, 1, 2, 2, 3, 3]);
	});

	test('are whole tasks, and together the minutes a day on every study day', () => {
		fc.assert(
			fc.property(someCourse, taskSeconds, (drawn, seconds) => {
				const all = portions(drawn, seconds);
				const total = all.reduce((sum, p) => sum + p.seconds, 0);
				const wanted = all.length * drawn.minutes * 60;
				expect(Math.abs(total - wanted)).toBeLessThanOrEqual(seconds / 2 + 1e-6);
				for (const p of all) expect(p.seconds % seconds).toBe(0);
			})
		);
	});

	test('never ask for more than twice the minutes a day, beyond a broken task', () => {
		fc.assert(
			fc.property(someCourse, taskSeconds, (drawn, seconds) => {
				for (const p of portions(drawn, seconds)) {
					expect(p.seconds).toBeGreaterThanOrEqual(0);
					expect(p.seconds).toBeLessThan(SHIPPED.sweepCap * drawn.minutes * 60 + seconds);
				}
			}),
			// Half a task is left at the end of one of its days.
			{ examples: [[halfLeft, 24]] }
		);
	});

	test('do not depend on days already past or missed', () => {
		fc.assert(
			fc.property(someCourse, taskSeconds, (drawn, seconds) => {
				for (const p of portions(drawn, seconds)) {
					expect(portionOn(drawn, p.day, seconds)).toEqual(p);
				}
			})
		);
	});
});

describe('the portion of a day', () => {
	test('is nothing on a day off', () => {
		fc.assert(
			fc.property(someCourse, fc.integer({ min: monday, max: monday + 60 }), (drawn, day) => {
				const { phase, seconds } = portionOn(drawn, day, 60);
				expect(phase === 'off').toBe(isOff(drawn.off, day));
				if (phase === 'off') expect(seconds).toBe(0);
			})
		);
	});

	test.each([
		{ when: 'without an exam', exam: null },
		{ when: 'on the exam day', exam: monday },
		{ when: 'after the exam', exam: monday - 9 }
	])('is the minutes a day $when', ({ exam }) => {
		const portion = portionOn(course({ exam, start: monday - 20 }), monday, 60);
		expect(portion).toEqual({ day: monday, phase: 'keep', seconds: 1200 });
	});

	test('counts from an earlier day when asked for one before the start', () => {
		expect(portionOn(course({ start: monday + 3 }), monday, 60).phase).toBe('build');
	});
});
