import fc from 'fast-check';
import { expect, test } from 'vitest';
import { removalDrill } from '../../../src/lib/engine/methods/removal-drill.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { brokenLimit } from '../../../src/lib/engine/solver/limits.ts';

test('rule application, FAA-H-8083-31B p. 4-46, Fig. 4-98: a 3/16 rivet takes a 5/32 drill', () => {
	expect(evaluate(removalDrill, { D: 3 / 16, layers: [0.04, 0.04] }).drill).toBe(5 / 32);
});

test('rule application, FAA-H-8083-31B p. 4-31, Fig. 4-74: a 1/8 universal head is 0.053125 high', () => {
	const { depth } = evaluate(removalDrill, { D: 1 / 8, layers: [0.04, 0.04] });
	expect(depth).toBeCloseTo(0.053125, 12);
});

test('rule application, FAA-H-8083-31B p. 4-45: two thirds of a stack of 0.090 is 0.060', () => {
	const { tightDepth } = evaluate(removalDrill, { D: 1 / 8, layers: [0.05, 0.04] });
	expect(tightDepth).toBeCloseTo(0.06, 12);
});

test('any rivet and stack: one size down, 17/40 of the shank, the stack less a third of it', () => {
	const stack = fc.array(fc.integer({ min: 16, max: 125 }), { minLength: 2, maxLength: 4 });
	fc.assert(
		fc.property(fc.integer({ min: 2, max: 12 }), stack, (dash, thousandths) => {
			const layers = thousandths.map((one) => one / 1000);
			const total = thousandths.reduce((sum, one) => sum + one) / 1000;
			const values = evaluate(removalDrill, { D: dash / 32, layers });
			expect(values.drill).toBe((dash - 1) / 32);
			expect(values.depth).toBeCloseTo((17 * dash) / 1280, 12);
			expect(values.tightDepth).toBeCloseTo(total - total / 3, 12);
		})
	);
});

test('a rivet thinner than the step down is refused', () => {
	const broken = (D: number) =>
		brokenLimit(removalDrill, evaluate(removalDrill, { D, layers: [0.04, 0.04] }));
	expect(broken(0.02)).toMatch(/too thin/);
	expect(broken(3 / 32)).toBeNull();
});
