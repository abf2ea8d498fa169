import type { Course } from './calendar.ts';
import { dayOf } from './day.ts';

/** What a learner settled about time, as it is kept: dates as YYYY-MM-DD. */
export interface CourseSettings {
	/** The day these settings were made. */
	readonly start: string;
	readonly exam: string | null;
	/** Minutes on an average study day, in `minutesRange`. */
	readonly minutes: number;
	/** Days of the week without practice, 0 = Sunday. */
	readonly weekdaysOff: readonly number[];
	readonly datesOff: readonly string[];
	/** Topics left out, by id: not on this learner's exam, or known well enough. */
	readonly without?: readonly string[];
}

export const minutesRange = { least: 5, most: 240 } as const;

/** What can be changed by hand. */
export type CourseChange = Partial<Omit<CourseSettings, 'start'>>;

/** The settings after a change; another exam day makes it another course, from today. */
export function changeCourse(
	settings: CourseSettings,
	change: CourseChange,
	today: string
): CourseSettings {
	const next = { ...settings, ...change };
	return next.exam === settings.exam ? next : { ...next, start: today };
}

/** Settings of a learner who has made none: twenty-five minutes a day, no exam. */
export function firstSettings(today: string): CourseSettings {
	return { start: today, exam: null, minutes: 25, weekdaysOff: [], datesOff: [] };
}

/** The settings as the planner takes them. */
export function courseOf(settings: CourseSettings): Course {
	return {
		start: dayOf(settings.start),
		exam: settings.exam === null ? null : dayOf(settings.exam),
		minutes: settings.minutes,
		without: settings.without ?? [],
		off: { weekdays: settings.weekdaysOff, dates: settings.datesOff.map(dayOf) }
	};
}
