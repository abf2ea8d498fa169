import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sightLine } from '../../../src/lib/engine/methods/sight-line.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { brokenLimit } from '../../../src/lib/engine/solver/limits.ts';
import { centreAlongLeg } from './bend-by-coordinates.ts';

const flange = { leg: 1, R: 0.16, T: 0.04, angle: 90 };

test.each([
	{
		from: 'FAA-H-8083-31B ch. 4 pp. 4-59, 4-66, Fig. 4-131 (rule application): flange of the channel',
		given: flange,
		tangent: 0.8,
		sight: 0.96
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-73, Fig. 4-147 (published flat, rule application): open bend of 45°',
		given: { leg: 0.77, R: 0.1875, T: 0.05, angle: 45 },
		tangent: 0.672,
		sight: 0.8595
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-73 (rule application): closed bend of 120°, one radius all the same',
		given: { leg: 1.25, R: 0.19, T: 0.05, angle: 120 },
		tangent: 0.8343,
		sight: 1.0243
	}
])('$from', ({ given, tangent, sight }) => {
	const values = evaluate(sightLine, given);
	expect(Math.abs(Number(values.tangentLine) - tangent)).toBeLessThan(0.001);
	expect(Math.abs(Number(values.sightLine) - sight)).toBeLessThan(0.001);
});

test('straight below the edge of the nose, by coordinates', () => {
	const bends = fc.record({
		leg: fc.integer({ min: 64, max: 128 }).map((n) => n / 16),
		R: fc.integer({ min: 1, max: 10 }).map((n) => n / 32),
		T: fc.integer({ min: 16, max: 90 }).map((n) => n / 1000),
		angle: fc.integer({ min: 10, max: 150 })
	});
	fc.assert(
		fc.property(bends, (given) => {
			const { leg, R, T, angle } = given;
			const centre = centreAlongLeg(leg, R, T, angle);
			const values = evaluate(sightLine, given);
			expect(values.tangentLine).toBeCloseTo(centre, 6);
			// The nose is a round bar of radius R about the centre: its edge is R in front of it.
			expect(values.sightLine).toBeCloseTo(centre + R, 6);
		})
	);
});

test('the middle of the allowance is another place, and is named', () => {
	const middle = evaluate(sightLine, flange, { slips: { sightLine: 'middle' } });
	expect(middle.sightLine).toBeCloseTo(0.8 + 0.2791 / 2, 4);
	expect(sightLine.slips.middle?.says).toMatch(/^In the middle of the bend allowance/);
});

describe('limits', () => {
	test('a leg of exactly its setback bends at its edge', () => {
		const values = evaluate(sightLine, { ...flange, leg: 0.2 });
		expect(values.tangentLine).toBeCloseTo(0, 9);
		expect(brokenLimit(sightLine, values)).toBeNull();
	});

	test('a shorter leg is refused with what to do', () => {
		const values = evaluate(sightLine, { ...flange, leg: 0.19 });
		expect(brokenLimit(sightLine, values)).toBe(
			'The leg is shorter than its setback: make it longer or the radius smaller.'
		);
	});
});
