import { dayOf } from '../schedule/day.ts';
import type { TaskSet } from './set.ts';

/** Names of the days, from the one that 1970-01-01 was. */
const days = ['Thu', 'Fri', 'Sat', 'Sun', 'Mon', 'Tue', 'Wed'];
const months = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

/** When a set is due: `Fri 4 Dec 2026, 16:00`. It is the time where the class is. */
export function dueWords(due: NonNullable<TaskSet['due']>): string {
	const [date = '', time] = due.split('T');
	const [year, month = 1, day] = date.split('-').map(Number);
	const weekday = days[((dayOf(date) % 7) + 7) % 7];
	const words = `${weekday} ${day} ${months[month - 1]} ${year}`;
	return time === undefined ? words : `${words}, ${time}`;
}
