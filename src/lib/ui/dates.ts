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

/** `2026` */
export function yearOf(day: number): string {
	return written(day, 'year');
}

/** `Friday` */
export function weekday(day: number): string {
	return written(day, 'weekday');
}

/** `11 December`, with the year when it is not this year's. */
export function longDate(day: number, today: number): string {
	const year = yearOf(day);
	const date = written(day, 'long');
	return year === yearOf(today) ? date : `${date} ${year}`;
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
	return near ? weekday(day) : shortDate(day);
}
