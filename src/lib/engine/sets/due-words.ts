import type { TaskSet } from './set.ts';

const dayWords = new Intl.DateTimeFormat('en-GB', {
	weekday: 'short',
	day: 'numeric',
	month: 'short',
	year: 'numeric',
	timeZone: 'UTC'
});

/** When a set is due: `Fri 4 Dec 2026, 16:00`. It is the time where the class is. */
export function dueWords(due: NonNullable<TaskSet['due']>): string {
	const [day = '', time] = due.split('T');
	const words = dayWords.format(new Date(`${day}T00:00:00Z`)).replace(',', '');
	return time === undefined ? words : `${words}, ${time}`;
}
