import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rivetLength } from '../../../src/lib/engine/methods/rivet-length.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';

const rows = [
	{
		from: 'rule application, FAA-H-8083-31B Fig. 4-76: 0.032 and 0.040 with 1/8',
		layers: [0.032, 0.04],
		D: 1 / 8,
		grip: 0.072,
		needed: 0.2595,
		dash: 5
	},
	{
		from: 'rule application, two 1/16 sheets with 1/8: needed is a full 16th and stays there',
		layers: [0.0625, 0.0625],
		D: 1 / 8,
		grip: 0.125,
		needed: 0.3125,
		dash: 5
	},
	{
		from: 'rule application, two 0.032 sheets with 3/32: up to −4, though −3 is nearer',
		layers: [0.032, 0.032],
		D: 3 / 32,
		grip: 0.064,
		needed: 0.204625,
		dash: 4
	}
];

test.each(rows)('$from', ({ layers, D, grip, needed, dash }) => {
	const values = evaluate(rivetLength, { layers, D });
	expect(values.grip).toBeCloseTo(grip, 12);
	expect(values.needed).toBeCloseTo(needed, 12);
	expect(values.length).toBe(dash / 16);
});

/** Whole 64,000ths of an inch: 0.001 in is 64, 1.5 D is 3000 a dash number, 1/16 in is 4000. */
function dashFor(thousandths: readonly number[], diameterDash: number): number {
	const needed = thousandths.reduce((total, one) => total + 64 * one, 3000 * diameterDash);
	return Math.floor((needed + 3999) / 4000);
}

test('any stack and rivet, in whole 64,000ths of an inch', () => {
	const stack = fc.array(fc.integer({ min: 16, max: 125 }), { minLength: 1, maxLength: 5 });
	fc.assert(
		fc.property(stack, fc.integer({ min: 3, max: 12 }), (thousandths, diameterDash) => {
			const layers = thousandths.map((one) => one / 1000);
			const { length } = evaluate(rivetLength, { layers, D: diameterDash / 32 });
			expect(length).toBe(dashFor(thousandths, diameterDash) / 16);
		})
	);
});
