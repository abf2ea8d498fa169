import { describe, expect, test } from 'vitest';
import {
	changeCourse,
	courseOf,
	firstSettings
} from '../../../src/lib/engine/schedule/course-settings.ts';
import { dayOf } from '../../../src/lib/engine/schedule/day.ts';

const settings = { ...firstSettings('2026-11-02'), exam: '2026-12-11' };

describe('a change of the settings', () => {
	test('keeps the day the course started', () => {
		const changed = changeCourse(settings, { minutes: 40, weekdaysOff: [0] }, '2026-11-25');
		expect(changed).toEqual({ ...settings, minutes: 40, weekdaysOff: [0] });
	});

	test.each([
		{ to: 'another day', exam: '2026-12-18', start: '2026-11-25' },
		{ to: 'none', exam: null, start: '2026-11-25' },
		{ to: 'the same day', exam: '2026-12-11', start: '2026-11-02' }
	])('of the exam to $to', ({ exam, start }) => {
		expect(changeCourse(settings, { exam }, '2026-11-25')).toEqual({ ...settings, exam, start });
	});
});

test('the planner takes days as numbers', () => {
	const course = courseOf({ ...settings, weekdaysOff: [0, 6], datesOff: ['2026-11-26'] });
	const [start, exam, off] = ['2026-11-02', '2026-12-11', '2026-11-26'].map(dayOf);
	expect(course).toEqual({
		start,
		exam,
		minutes: 25,
		without: [],
		off: { weekdays: [0, 6], dates: [off] }
	});
});
