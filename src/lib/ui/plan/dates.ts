const dayLength = 86_400_000;

// Made once: making one takes longer than a hundred uses of it.
const formats = {
	year: format({ year: 'numeric' }),
	long: format({ day: 'numeric', month: 'long' }),
	short: format({ day: 'numeric', month: 'short' }),
	weekday: format({ weekday: 'long' }),
	shortWeekday: format({ weekday: 'short' })
};

function format(options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
	return new Intl.DateTimeFormat('en-GB', { ...options, timeZone: 'UTC' });
}

/** A day as people write it; a day is a whole number, days since 1970-01-01. */
function written(day: number, how: keyof typeof formats): string {
	return formats[how].format(day * dayLength);
}

/** `11 December`, with the year when it is not this year's. */
export function longDate(day: number, today: number): string {
	const year = written(day, 'year');
	const date = written(day, 'long');
	return year === written(today, 'year') ? date : `${date} ${year}`;
}

/** `11 Dec` */
export function shortDate(day: number): string {
	return written(day, 'short');
}

/** `Fri 11 Dec` */
export function tableDate(day: number): string {
	return `${written(day, 'shortWeekday')} ${shortDate(day)}`;
}

/** `today`, `tomorrow`, the weekday within a week, else the date. */
export function dayName(day: number, today: number): string {
	if (day === today) return 'today';
	if (day === today + 1) return 'tomorrow';
	const near = day > today && day < today + 7;
	return near ? written(day, 'weekday') : shortDate(day);
}

/** One day, or the first and the last of several in a row. */
export interface DayRange {
	readonly from: number;
	readonly to: number;
}

/** Days in order, those in a row taken together. */
export function rangesOf(days: readonly number[]): DayRange[] {
	const ranges: DayRange[] = [];
	for (const day of [...new Set(days)].sort((a, b) => a - b)) {
		const last = ranges.at(-1);
		if (last && day === last.to + 1) ranges[ranges.length - 1] = { ...last, to: day };
		else ranges.push({ from: day, to: day });
	}
	return ranges;
}

/** Every day of a range. */
export function daysIn({ from, to }: DayRange): number[] {
	return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}
