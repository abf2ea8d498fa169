import { expect, test } from 'vitest';
import { rivetDiameterInRange } from '../../../src/lib/engine/methods/rivet-diameter-in-range.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { brokenLimit } from '../../../src/lib/engine/solver/limits.ts';

// Rule application, FAA-H-8083-31B p. 4-32: 2.5T to 3T, and the next larger size. Bins as in Fig. 4-90.
const bins = [3, 4, 5, 6, 8, 10].map((dash) => dash / 32);

test.each([0.032, 0.036, 0.063, 0.064, 0.071, 0.072, 0.8 / 25.4, 1.6 / 25.4, 1.8 / 25.4, 0.09])(
	'of the bins for %d in, by looking along them',
	(thickest) => {
		const values = evaluate(rivetDiameterInRange, { thickest });
		const within = bins.filter((D) => D >= 2.5 * thickest && D <= 3 * thickest);
		expect(within).toEqual([values.inRange]);
		expect(values.above).toBe(bins.find((D) => D >= 3 * thickest));
		expect(brokenLimit(rivetDiameterInRange, values)).toBeNull();
	}
);

test('where no bin lies within the range, it says so', () => {
	const values = evaluate(rivetDiameterInRange, { thickest: 0.04 });
	expect(brokenLimit(rivetDiameterInRange, values)).toMatch(/^No stocked rivet lies within/);
});
