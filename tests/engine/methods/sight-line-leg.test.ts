import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sightLine } from '../../../src/lib/engine/methods/sight-line.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { inverseOf } from '../../../src/lib/engine/solver/inverse.ts';
import { centreAlongLeg } from './bend-by-coordinates.ts';

const finishedLeg = inverseOf(sightLine, 'leg');

test.each([
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-63: flats of 0.80 in and a setback of 0.20 in come of flanges of 1.00 in',
		given: { R: 0.16, T: 0.04, angle: 90, tangentLine: 0.8 },
		setback: 0.2,
		leg: 1
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-73, Fig. 4-147: open bend of 45°, flats 0.672 and 1.422 in',
		given: { R: 0.1875, T: 0.05, angle: 45, tangentLine: 0.672 },
		setback: 0.098,
		leg: 0.77
	},
	{
		from: 'the same figure, the other leg',
		given: { R: 0.1875, T: 0.05, angle: 45, tangentLine: 1.422 },
		setback: 0.098,
		leg: 1.52
	}
])('$from', ({ given, setback, leg }) => {
	const values = evaluate(finishedLeg, given);
	expect(Math.abs(Number(values.setback) - setback)).toBeLessThan(0.001);
	expect(Math.abs(Number(values.leg) - leg)).toBeLessThan(0.001);
});

test('the tangent line lies straight below the centre of the bend, by coordinates', () => {
	const bends = fc.record({
		tangentLine: fc.integer({ min: 20, max: 600 }).map((n) => n / 100),
		R: fc.integer({ min: 1, max: 10 }).map((n) => n / 32),
		T: fc.integer({ min: 16, max: 90 }).map((n) => n / 1000),
		angle: fc.integer({ min: 10, max: 150 })
	});
	fc.assert(
		fc.property(bends, (given) => {
			const { tangentLine, R, T, angle } = given;
			const leg = Number(evaluate(finishedLeg, given).leg);
			expect(centreAlongLeg(leg, R, T, angle)).toBeCloseTo(tangentLine, 6);
		})
	);
});
