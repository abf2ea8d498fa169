import { expect, test } from 'vitest';
import { dayOf } from '../../src/lib/engine/schedule/day.ts';
import { dayName, longDate, shortDate, tableDate } from '../../src/lib/ui/dates.ts';

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
