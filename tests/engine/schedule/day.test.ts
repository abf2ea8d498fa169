import { expect, test } from 'vitest';
import { dayOf, isoOf } from '../../../src/lib/engine/schedule/day.ts';

const msPerDay = 86_400_000;
const twoCenturies = 73_049;

test('every day of two hundred years before and after 1970 is the one that Date says', () => {
	const wrong: string[] = [];
	for (let day = -twoCenturies; day <= twoCenturies; day++) {
		const iso = new Date(day * msPerDay).toISOString().slice(0, 10);
		if (isoOf(day) !== iso || dayOf(iso) !== day) wrong.push(iso);
	}
	expect(wrong).toEqual([]);
});

test.each([
	['1770-01-01', -73_048],
	['1899-12-31', -25_568],
	['1970-01-01', 0],
	['2000-02-29', 11_016],
	['2026-12-11', 20_798]
])('%s is day %i', (iso, day) => {
	expect(dayOf(iso)).toBe(day);
	expect(isoOf(day)).toBe(iso);
});
