import fc from 'fast-check';
import { expect, test } from 'vitest';
import { daysIn, rangesOf } from '../../../src/lib/ui/plan/day-ranges.ts';

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
