import { dayMonth } from './day-month.ts';

const dayLength = 86_400_000;

const months = [
	...['January', 'February', 'March', 'April', 'May', 'June', 'July'],
	...['August', 'September', 'October', 'November', 'December']
];
const weekdays = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];

function dateOf(day: number): Date {
	return new Date(day * dayLength);
}

/** `2026` */
export function yearOf(day: number): string {
	return String(dateOf(day).getUTCFullYear());
}

/** `Friday` */
export function weekday(day: number): string {
	return weekdays[dateOf(day).getUTCDay()] ?? '';
}

/** `11 December`, with the year when it is not this year's. */
export function longDate(day: number, today: number): string {
	const year = yearOf(day);
	const on = dateOf(day);
	const date = `${on.getUTCDate()} ${months[on.getUTCMonth()]}`;
	return year === yearOf(today) ? date : `${date} ${year}`;
}

/** `11 Dec` */
export function shortDate(day: number): string {
	const on = dateOf(day);
	return dayMonth(on.getUTCDate(), on.getUTCMonth());
}

/** `Fri 11 Dec` */
export function tableDate(day: number): string {
	return `${weekday(day).slice(0, 3)} ${shortDate(day)}`;
}

/** `today`, `tomorrow`, the weekday within a week, else the date. */
export function dayName(day: number, today: number): string {
	if (day === today) return 'today';
	if (day === today + 1) return 'tomorrow';
	const near = day > today && day < today + 7;
	return near ? weekday(day) : shortDate(day);
}
