import { topicIds, topics } from '$lib/engine/families/topics.ts';
import { isoOf } from '$lib/engine/schedule/day.ts';

/** A share from 0 to 1 as a count in 100. */
export function inHundred(share: number): string {
	return `${Math.round(share * 100)} in 100`;
}

/** A time in minutes, and in hours from one hour on. */
export function timeWords(seconds: number): string {
	const minutes = minutesOf(seconds);
	if (minutes < 60) return `${minutes} min`;
	const rest = minutes % 60;
	return `${Math.floor(minutes / 60)} h${rest === 0 ? '' : ` ${rest} min`}`;
}

/** Whole minutes; what took any time at all took one. */
export function minutesOf(seconds: number): number {
	return seconds === 0 ? 0 : Math.max(1, Math.round(seconds / 60));
}

/** A count with its noun. */
export function counted(count: number, one: string, many = `${one}s`): string {
	return `${count.toLocaleString('en-GB')} ${count === 1 ? one : many}`;
}

/** A day with its weekday, such as Mon 9 Mar; with its year when that is not today's. */
export function dateWords(day: number, today: number): string {
	return dateIn(day, {
		weekday: 'short',
		day: 'numeric',
		month: 'short',
		...(isSameYear(day, today) ? {} : { year: 'numeric' })
	});
}

/** The same without the weekday, and in one word for today. */
export function shortDate(day: number, today: number): string {
	if (day === today) return 'today';
	return dateIn(day, {
		day: 'numeric',
		month: 'short',
		...(isSameYear(day, today) ? {} : { year: '2-digit' })
	});
}

function dateIn(day: number, options: Intl.DateTimeFormatOptions): string {
	return new Date(`${isoOf(day)}T12:00:00`).toLocaleDateString('en-GB', options).replace(',', '');
}

function isSameYear(one: number, other: number): boolean {
	return isoOf(one).slice(0, 4) === isoOf(other).slice(0, 4);
}

/** Name of a topic as the engine calls it. */
export function topicWords(topic: string): string {
	const id = topicIds.find((one) => one === topic);
	return id === undefined ? topic : topics[id];
}
