import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rivetDiameter } from '../../../src/lib/engine/methods/rivet-diameter.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';

const rows = [
	{
		from: 'published, AC 43.13-1B par. 4-58g(2)(a), p. 4-27: 0.032 gives 0.096 and 1/8, though 3/32 is nearer',
		thickest: 0.032,
		threeT: 0.096,
		diameter: 1 / 8
	},
	{
		from: 'published, FAA-H-8083-31B pp. 4-32, 4-33, 4-86: 0.040 gives 0.120 and 1/8',
		thickest: 0.04,
		threeT: 0.12,
		diameter: 1 / 8
	},
	{
		from: 'rule application, FAA-H-8083-31B p. 4-32: 0.016 comes out under 3/32, the least allowed',
		thickest: 0.016,
		threeT: 0.048,
		diameter: 3 / 32
	},
	{
		from: 'rule application: 0.03125 is exactly 3/32 and stays there',
		thickest: 1 / 32,
		threeT: 3 / 32,
		diameter: 3 / 32
	},
	{
		from: 'rule application: 3T is 0.216, and 7/32 is in no bin',
		thickest: 0.072,
		threeT: 0.216,
		diameter: 1 / 4
	}
];

test.each(rows)('$from', ({ thickest, threeT, diameter }) => {
	const values = evaluate(rivetDiameter, { thickest });
	expect(values.threeT).toBeCloseTo(threeT, 12);
	expect(values.diameter).toBe(diameter);
});

/** The first stocked dash number whose rivet is not thinner than three sheets, in whole numbers. */
function dashFor(thousandths: number): number {
	const stocked = [3, 4, 5, 6, 8, 10, 12];
	return stocked.find((dash) => dash * 1000 >= 3 * thousandths * 32) ?? NaN;
}

test('sheets from 0.001 to 0.125 in, by counting up the dash numbers', () => {
	fc.assert(
		fc.property(fc.integer({ min: 1, max: 125 }), (thousandths) => {
			const { diameter } = evaluate(rivetDiameter, { thickest: thousandths / 1000 });
			expect(Number(diameter) * 32).toBeCloseTo(dashFor(thousandths), 9);
		})
	);
});
