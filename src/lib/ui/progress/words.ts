import { topicIds, topics } from '$lib/engine/families/topics.ts';
import { shortDate, tableDate, yearOf } from '../dates.ts';

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

/** A day with its weekday, such as Mon 9 Mar; with its year when that is not today's. */
export function dateWords(day: number, today: number): string {
	const year = yearOf(day);
	return year === yearOf(today) ? tableDate(day) : `${tableDate(day)} ${year}`;
}

/** The same without the weekday and the century, and in one word for today. */
export function briefDate(day: number, today: number): string {
	if (day === today) return 'today';
	const year = yearOf(day);
	return year === yearOf(today) ? shortDate(day) : `${shortDate(day)} ${year.slice(2)}`;
}

/** Name of a topic as the engine calls it. */
export function topicWords(topic: string): string {
	const id = topicIds.find((one) => one === topic);
	return id === undefined ? topic : topics[id];
}
