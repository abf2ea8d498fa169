import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import {
	type CourseSettings,
	changeCourse,
	firstSettings
} from '../../../src/lib/engine/schedule/course-settings.ts';
import { dayOf } from '../../../src/lib/engine/schedule/day.ts';
import { CourseForm, settleTime } from '../../../src/lib/ui/plan/course-form.svelte.ts';

const today = '2026-11-25';

/** A form over settings that follow its changes, and the settings. */
function open(change: Partial<CourseSettings> = {}) {
	const kept = { settings: { ...firstSettings(today), ...change } as CourseSettings, changes: 0 };
	const form = new CourseForm({
		settings: () => kept.settings,
		today: () => dayOf(today),
		onchange(made) {
			kept.settings = changeCourse(kept.settings, made, today);
			kept.changes++;
		}
	});
	return { form, kept };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('minutes a day', () => {
	test.each(['5', ' 40 ', '45 min', '60 minutes', '240'])('“%s” is taken', (typed) => {
		const { form, kept } = open();
		form.typeMinutes(typed);
		form.takeMinutes();
		expect(kept.settings.minutes).toBe(parseInt(typed));
		expect(form.problems.minutes).toBeUndefined();
	});

	test.each(['', '4', '241', '12.5', '-30', 'half an hour', '1000'])(
		'“%s” changes nothing, stays as typed and is told what to do',
		(typed) => {
			const { form, kept } = open();
			form.typeMinutes(typed);
			form.takeMinutes();
			expect(kept.changes).toBe(0);
			expect(form.minutes).toBe(typed);
			expect(form.problems.minutes).toBe('Type a whole number of minutes from 5 to 240.');
		}
	);

	test('are taken once, when the typing pauses', () => {
		const { form, kept } = open();
		for (const typed of ['4', '45', '4', '40']) {
			form.typeMinutes(typed);
			vi.advanceTimersByTime(settleTime - 1);
		}
		expect(kept.changes).toBe(0);
		vi.advanceTimersByTime(1);
		expect(kept).toMatchObject({ changes: 1, settings: { minutes: 40 } });
		form.takeMinutes();
		expect(kept.changes).toBe(1);
	});

	test('are not taken after the form is gone', () => {
		const { form, kept } = open();
		form.typeMinutes('40');
		form.stop();
		vi.runAllTimers();
		expect(kept.changes).toBe(0);
	});
});

describe('the exam', () => {
	test.each([today, '2026-12-11', '2028-11-20'])('may be on %s', (date) => {
		const { form, kept } = open();
		form.typeExam(date);
		vi.runAllTimers();
		expect(kept.settings.exam).toBe(date);
	});

	test.each([
		{ date: '2026-11-24', says: 'That day has passed' },
		{ date: '0202-12-11', says: 'That day has passed' },
		{ date: '2062-12-11', says: 'check the year' },
		{ date: '20026-12-11', says: 'check the year' }
	])('may not be on $date, and the date before stays', ({ date, says }) => {
		const { form, kept } = open({ exam: '2026-12-11' });
		form.typeExam(date);
		vi.runAllTimers();
		expect(kept.settings.exam).toBe('2026-12-11');
		expect(form.exam).toBe(date);
		expect(form.problems.exam).toContain(says);
	});

	test('is not removed by a date that is half typed', () => {
		const { form, kept } = open({ exam: '2026-12-11' });
		form.typeExam('');
		form.takeExam();
		vi.runAllTimers();
		expect(kept.changes).toBe(0);
	});

	test('can be removed, with what was wrong about it', () => {
		const { form, kept } = open({ exam: '2026-12-11' });
		form.typeExam('2026-11-01');
		form.takeExam();
		form.removeExam();
		expect(kept.settings.exam).toBeNull();
		expect(form.exam).toBe('');
		expect(form.problems.exam).toBeUndefined();
	});
});

test('topics may be left out, all but one', () => {
	const { form, kept } = open();
	expect(form.setTopic('repairs', false, 3)).toBe(false);
	expect(form.setTopic('bends', false, 3)).toBe(false);
	expect(kept.settings.without).toEqual(['bends', 'repairs']);
	expect(form.setTopic('rivets', false, 3)).toBe(true);
	expect(form.problems.topics).toContain('at least one topic');
	expect(form.setTopic('bends', true, 3)).toBe(true);
	expect(kept.settings.without).toEqual(['repairs']);
	expect(form.problems.topics).toBeUndefined();
});

describe('days off', () => {
	test('every week: all but one', () => {
		const { form, kept } = open();
		for (const day of [6, 0, 1, 2, 3, 4]) expect(form.setWeekday(day, true)).toBe(true);
		expect(kept.settings.weekdaysOff).toEqual([0, 1, 2, 3, 4, 6]);
		expect(form.setWeekday(5, true)).toBe(false);
		expect(kept.settings.weekdaysOff).toHaveLength(6);
		expect(form.problems.weekdays).toContain('at least one day');
		expect(form.setWeekday(0, false)).toBe(false);
		expect(kept.settings.weekdaysOff).not.toContain(0);
		expect(form.problems.weekdays).toBeUndefined();
	});

	test('a single one, and several in a row that join it', () => {
		const { form, kept } = open();
		form.from = '2026-12-24';
		form.addDates();
		expect(kept.settings.datesOff).toEqual(['2026-12-24']);
		expect([form.from, form.to]).toEqual(['', '']);
		[form.from, form.to] = ['2026-12-23', '2026-12-26'];
		form.addDates();
		expect(kept.settings.datesOff).toHaveLength(4);
	});

	test('are shown from today on and removed together', () => {
		const datesOff = ['2026-11-20', '2026-11-24', '2026-11-25', '2026-11-26', '2026-12-24'];
		const { form, kept } = open({ start: '2026-11-23', datesOff });
		const [now, christmas] = form.ranges;
		expect(now).toEqual({ from: dayOf(today), to: dayOf('2026-11-26') });
		expect(christmas?.to).toBe(dayOf('2026-12-24'));
		if (now) form.removeDates(now);
		expect(kept.settings.datesOff).toEqual(['2026-11-24', '2026-12-24']);
	});

	test.each([
		{ from: '', to: '', says: 'Choose the day off first.' },
		{ from: '', to: '2026-12-01', says: 'Choose the day off first.' },
		{ from: '2026-11-20', to: '', says: 'That day has passed' },
		{ from: '2026-12-02', to: '2026-12-01', says: 'comes before the first' },
		{ from: '2026-12-02', to: '2066-12-01', says: 'check the year' },
		{ from: '2026-12-02', to: '2028-05-01', says: 'add fewer' }
	])('from “$from” to “$to” are not taken', ({ from, to, says }) => {
		const { form, kept } = open();
		[form.from, form.to] = [from, to];
		form.addDates();
		expect(kept.changes).toBe(0);
		expect(form.problems.dates).toContain(says);
		expect([form.from, form.to]).toEqual([from, to]);
	});
});
