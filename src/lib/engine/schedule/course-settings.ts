import * as v from 'valibot';
import type { Course } from './calendar.ts';
import { dayOf } from './day.ts';
import type { KnownEvent } from './event.ts';

const date = v.pipe(v.string(), v.isoDate());

const schema = v.object({
	/** The day these settings were made. */
	start: date,
	exam: v.nullable(date),
	minutes: v.pipe(v.number(), v.integer(), v.minValue(5), v.maxValue(240)),
	/** Days of the week without practice, 0 = Sunday. */
	weekdaysOff: v.pipe(v.array(v.picklist([0, 1, 2, 3, 4, 5, 6])), v.maxLength(7)),
	datesOff: v.pipe(v.array(date), v.maxLength(400))
});

/** What a learner settled about time, as it is kept: dates as YYYY-MM-DD. */
export type CourseSettings = Readonly<v.InferOutput<typeof schema>>;

/** Key of the setting event that carries them. */
export const courseKey = 'course';

/** The newest settings in the log, or null when none were made. */
export const courseFold = {
	name: 'course',
	version: 1,
	empty: null as CourseSettings | null,
	apply(state: CourseSettings | null, event: KnownEvent): CourseSettings | null {
		if (event.type !== 'setting' || event.key !== courseKey) return state;
		const read = v.safeParse(schema, event.value);
		return read.success ? read.output : state;
	}
};

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
		off: { weekdays: settings.weekdaysOff, dates: settings.datesOff.map(dayOf) }
	};
}
