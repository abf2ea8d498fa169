import * as v from 'valibot';
import { type CourseSettings, minutesRange } from './course-settings.ts';
import { shortList } from './event-fields.ts';
import type { KnownEvent } from './event.ts';

const date = v.pipe(v.string(), v.isoDate());

const schema = v.object({
	start: date,
	exam: v.nullable(date),
	minutes: v.pipe(
		v.number(),
		v.integer(),
		v.minValue(minutesRange.least),
		v.maxValue(minutesRange.most)
	),
	weekdaysOff: v.pipe(v.array(v.picklist([0, 1, 2, 3, 4, 5, 6])), v.maxLength(7)),
	datesOff: v.pipe(v.array(date), v.maxLength(400)),
	without: v.optional(shortList)
});

/** Key of the setting event that carries the course settings. */
export const courseKey = 'course';

/** The newest settings in the log, or null when none were made. */
export const courseFold = {
	name: 'course',
	version: 2,
	empty: null as CourseSettings | null,
	apply(state: CourseSettings | null, event: KnownEvent): CourseSettings | null {
		if (event.type !== 'setting' || event.key !== courseKey) return state;
		const read = v.safeParse(schema, event.value);
		return read.success ? read.output : state;
	}
};
