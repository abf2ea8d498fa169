import { dayOf } from '../engine/schedule/day.ts';
import { type CalendarEntry, icalendar } from '../engine/schedule/icalendar.ts';
import { setHash, type TaskSet } from '../engine/sets/set.ts';

/** How long the entry is that ends when a set is due, in minutes. */
const minutes = 15;

/**
 * The day a set is due as a calendar file; null where it has none.
 *
 * @param stamp when it is made, in milliseconds since 1970-01-01 UTC
 * @param link the address that opens the set
 */
export function dueCalendar(set: TaskSet, stamp: number, link: string): string | null {
	const { due, title } = set;
	if (due === null) return null;
	const [date = '', time] = due.split('T');
	const [hour = 0, minute = 0] = (time ?? '').split(':').map(Number);
	const entry: CalendarEntry = {
		uid: `due-${setHash(set)}`,
		day: dayOf(date),
		summary: `Due: ${title}`,
		description: link,
		...(time === undefined
			? {}
			: { time: { start: Math.max(0, hour * 60 + minute - minutes), minutes } })
	};
	return icalendar([entry], stamp);
}
