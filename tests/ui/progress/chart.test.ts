import fc from 'fast-check';
import { expect, test } from 'vitest';
import { polyline, roundTop, scale, thinned } from '../../../src/lib/ui/progress/chart.ts';

test('a scale maps its ends to the ends, and what lies between in proportion', () => {
	const y = scale([0, 1], [108, 10]);
	expect([y(0), y(0.5), y(1)]).toEqual([108, 59, 10]);
});

test('a scale of one value gives the start', () => {
	expect(scale([7, 7], [30, 90])(7)).toBe(30);
});

test('a path goes from point to point', () => {
	expect(
		polyline([
			[0, 10],
			[1.25, 3]
		])
	).toBe('M0.0 10.0L1.3 3.0');
});

test.each([
	[0, 5],
	[5, 5],
	[6, 6],
	[9, 10],
	[11, 15],
	[27, 30],
	[52, 60],
	[61, 80],
	[101, 150]
])('bars up to %i are drawn up to %i', (most, top) => {
	expect(roundTop(most)).toBe(top);
});

test('the top of the bars is never below them, nor twice as high', () => {
	fc.assert(
		fc.property(fc.integer({ min: 5, max: 100_000 }), (most) => {
			expect(roundTop(most)).toBeGreaterThanOrEqual(most);
			expect(roundTop(most)).toBeLessThanOrEqual(1.5 * most);
		})
	);
});

test('up to sixty days are drawn one by one, more of them week by week back from the last', () => {
	const days = (count: number) => Array.from({ length: count }, (_, i) => ({ day: 100 + i }));
	expect(thinned(days(60))).toEqual(days(60));
	const weekly = thinned(days(61)).map(({ day }) => day);
	expect(weekly).toEqual([104, 111, 118, 125, 132, 139, 146, 153, 160]);
	expect(thinned([])).toEqual([]);
});
