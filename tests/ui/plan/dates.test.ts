import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayOf } from '../../../src/lib/engine/schedule/day.ts';
import {
	dayName,
	daysIn,
	longDate,
	rangesOf,
	shortDate,
	tableDate
} from '../../../src/lib/ui/plan/dates.ts';

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

test('days in a row are one range, whatever their order', () => {
	expect(rangesOf([5, 3, 4, 9, 4])).toEqual([
		{ from: 3, to: 5 },
		{ from: 9, to: 9 }
	]);
});

test('ranges hold the same days, and never touch', () => {
	fc.assert(
		fc.property(fc.uniqueArray(fc.nat(60)), (days) => {
			const ranges = rangesOf(days);
			expect(ranges.flatMap(daysIn)).toEqual([...days].sort((a, b) => a - b));
			ranges.slice(1).forEach((range, i) => {
				expect(range.from).toBeGreaterThan((ranges[i]?.to ?? NaN) + 1);
			});
		})
	);
});
