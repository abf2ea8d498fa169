import { expect, test } from 'vitest';
import { dayOf } from '../../src/lib/engine/schedule/day.ts';
import {
	dayName,
	longDate,
	shortDate,
	tableDate,
	weekday,
	yearOf
} from '../../src/lib/ui/dates.ts';

// a Wednesday
const today = dayOf('2026-11-25');

test.each([
	{ date: '2026-12-11', long: '11 December', short: '11 Dec', table: 'Fri 11 Dec' },
	{ date: '2027-01-04', long: '4 January 2027', short: '4 Jan', table: 'Mon 4 Jan' }
])('$date in words', ({ date, long, short, table }) => {
	const day = dayOf(date);
	expect([longDate(day, today), shortDate(day), tableDate(day)]).toEqual([long, short, table]);
});

test.each([
	{ date: '2026-11-25', name: 'today' },
	{ date: '2026-11-26', name: 'tomorrow' },
	{ date: '2026-11-27', name: 'Friday' },
	{ date: '2026-12-01', name: 'Tuesday' },
	{ date: '2026-12-02', name: '2 Dec' },
	{ date: '2026-11-24', name: '24 Nov' }
])('$date is called $name', ({ date, name }) => expect(dayName(dayOf(date), today)).toBe(name));

test('every day of a leap year is called as the language of the pages has it', () => {
	const written = (options: Intl.DateTimeFormatOptions) =>
		new Intl.DateTimeFormat('en-GB', { ...options, timeZone: 'UTC' });
	const long = written({ day: 'numeric', month: 'long' });
	const short = written({ day: 'numeric', month: 'short' });
	const weekdayShort = written({ weekday: 'short' });
	const weekdayLong = written({ weekday: 'long' });
	const first = dayOf('2028-01-01');
	for (let day = first; day < first + 366; day++) {
		const date = day * 86_400_000;
		expect(longDate(day, first)).toBe(long.format(date));
		expect(shortDate(day)).toBe(short.format(date));
		expect(tableDate(day)).toBe(`${weekdayShort.format(date)} ${short.format(date)}`);
		expect(weekday(day)).toBe(weekdayLong.format(date));
	}
	expect([yearOf(first - 1), yearOf(first), yearOf(dayOf('0001-01-01'))]).toEqual([
		'2027',
		'2028',
		'1'
	]);
});
