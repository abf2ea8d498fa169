import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rivetDiameter } from '../../../src/lib/engine/methods/rivet-diameter.ts';
import { rivetDiameterFromStack } from '../../../src/lib/engine/methods/rivet-diameter-from-stack.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';

const rows = [
	{
		from: 'rule application, FAA-H-8083-31B p. 4-32, thicker of two sheets: 0.025 on 0.040',
		layers: [0.025, 0.04],
		thickest: 0.04,
		diameter: 1 / 8
	},
	{
		from: 'rule application, the same with the sheets turned over',
		layers: [0.04, 0.025],
		thickest: 0.04,
		diameter: 1 / 8
	},
	{
		from: 'rule application, three layers: the middle one decides',
		layers: [0.032, 0.05, 0.02],
		thickest: 0.05,
		diameter: 5 / 32
	}
];

test.each(rows)('$from', ({ layers, thickest, diameter }) => {
	expect(evaluate(rivetDiameterFromStack, { layers })).toMatchObject({ thickest, diameter });
});

test('the order of the layers and thinner layers change nothing', () => {
	const thousandths = fc.array(fc.integer({ min: 16, max: 90 }), { minLength: 1, maxLength: 4 });
	fc.assert(
		fc.property(thousandths, (stack) => {
			const layers = stack.map((one) => one / 1000);
			const sorted = [...stack].sort((one, other) => one - other);
			const thickest = (sorted.at(-1) ?? 0) / 1000;
			const { diameter } = evaluate(rivetDiameterFromStack, { layers });
			expect(diameter).toBe(evaluate(rivetDiameter, { thickest }).diameter);
		})
	);
});
