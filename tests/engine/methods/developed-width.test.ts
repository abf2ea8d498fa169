import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { developedWidth } from '../../../src/lib/engine/methods/developed-width.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { brokenLimit } from '../../../src/lib/engine/solver/limits.ts';
import { centreAlongLeg } from './bend-by-coordinates.ts';

const channel = { R: 0.16, T: 0.04, legs: [1, 2, 1], angles: [90, 90] };

function list(value: unknown): readonly number[] {
	if (!Array.isArray(value)) throw new Error('not a list');
	return value.map(Number);
}

test.each([
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-63 (published): flats of the channel',
		given: channel,
		flats: [0.8, 1.6, 0.8],
		width: 3.7581,
		within: 0.0001
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-73, Fig. 4-147 (published): open bend of 45°',
		given: { R: 0.1875, T: 0.05, legs: [0.77, 1.52], angles: [45] },
		flats: [0.672, 1.422],
		width: 2.259,
		// The allowance is read in the row of 0.051.
		within: 0.0015
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-72, Fig. 4-146 (published, to 1/16 in): corner of a box, 2 13/16',
		given: { R: 0.25, T: 0.063, legs: [1, 2], angles: [90] },
		flats: [0.687, 1.687],
		width: 2.8125,
		within: 0.003
	},
	{
		from: 'FAA-H-8083-31B ch. 4 pp. 4-59 to 4-66 (rule application): Z section',
		given: { R: 0.125, T: 0.032, legs: [0.75, 2, 0.75], angles: [90, 90] },
		flats: [0.593, 1.686, 0.593],
		width: 3.3091,
		within: 0.0001
	},
	{
		from: 'FAA-H-8083-31B ch. 4 pp. 4-59 to 4-66 (rule application): hat section',
		given: { R: 0.16, T: 0.04, legs: [0.75, 1, 1.25, 1, 0.75], angles: [90, 90, 90, 90] },
		flats: [0.55, 0.6, 0.85, 0.6, 0.55],
		width: 4.2663,
		within: 0.0001
	},
	{
		from: 'FAA-H-8083-31B ch. 4 pp. 4-59 to 4-66 (rule application): closed bend of 120°',
		given: { R: 0.19, T: 0.05, legs: [1.25, 1.75], angles: [120] },
		flats: [0.8343, 1.3343],
		width: 2.6128,
		within: 0.0001
	}
])('$from', ({ given, flats, width, within }) => {
	const values = evaluate(developedWidth, given);
	list(values.flats).forEach((flat, i) => {
		expect(Math.abs(flat - (flats[i] ?? NaN))).toBeLessThanOrEqual(within);
	});
	expect(list(values.flats)).toHaveLength(flats.length);
	expect(Math.abs(Number(values.width) - width)).toBeLessThanOrEqual(within);
	expect(brokenLimit(developedWidth, values)).toBeNull();
});

describe('printed results that do not follow from their own formula', () => {
	test('FAA-H-8083-31B ch. 4 p. 4-66: 3.74 rests on an allowance of 0.27; worked through it is 3.758', () => {
		const printed = evaluate(developedWidth, channel, { values: { allowances: [0.27, 0.27] } });
		expect(printed.width).toBeCloseTo(3.74, 9);
		expect(Number(evaluate(developedWidth, channel).width) - 3.74).toBeGreaterThan(1 / 64);
	});

	test('FAA-H-8083-31B ch. 4 pp. 4-64, 4-66: with the chart cell of 0.273 it is 3.746', () => {
		const byChart = evaluate(developedWidth, channel, { values: { allowances: [0.273, 0.273] } });
		expect(byChart.width).toBeCloseTo(3.746, 9);
	});

	test('FAA-H-8083-31B ch. 4 p. 4-68, Fig. 4-133: X is read as 0.17 off the chart and works out at 0.1767', () => {
		const angle = { R: 0.22, T: 0.063, legs: [2, 2], angles: [90] };
		const width = Number(evaluate(developedWidth, angle).width);
		expect(4 - width).toBeCloseTo(0.1767, 4);
		expect(Math.abs(width - 3.83)).toBeLessThan(0.01);
	});

	test('FAA-H-8083-31B ch. 4 p. 4-72, Fig. 4-146: the gain is printed 0.191, 0.003 off at most', () => {
		const corner = { R: 0.25, T: 0.063, legs: [1, 2], angles: [90] };
		const gain = 3 - Number(evaluate(developedWidth, corner).width);
		expect(gain).toBeCloseTo(0.1896, 4);
		expect(Math.abs(gain - 0.191)).toBeLessThan(0.003);
	});
});

const bentParts = fc
	.array(fc.integer({ min: 5, max: 160 }), { minLength: 1, maxLength: 5 })
	.chain((angles) =>
		fc.record({
			R: fc.integer({ min: 1, max: 10 }).map((n) => n / 32),
			T: fc.integer({ min: 16, max: 90 }).map((n) => n / 1000),
			legs: fc.array(
				fc.integer({ min: 80, max: 160 }).map((n) => n / 16),
				{ minLength: angles.length + 1, maxLength: angles.length + 1 }
			),
			angles: fc.constant(angles)
		})
	);

describe('any part with room for its bends', () => {
	test('is worked the same bend by bend: mold lines, less what each bend saves', () => {
		fc.assert(
			fc.property(bentParts, (given) => {
				const { R, T, legs, angles } = given;
				let width = legs.reduce((sum, leg) => sum + leg, 0);
				for (const angle of angles) {
					const setback = 0 - centreAlongLeg(0, R, T, angle);
					const terms = [0.01743 * R * angle, 0.0078 * T * angle];
					width -= 2 * setback - (terms[0] ?? 0) - (terms[1] ?? 0);
				}
				expect(evaluate(developedWidth, given).width).toBeCloseTo(width, 6);
			})
		);
	});

	test('comes out narrower than its mold line dimensions added up', () => {
		fc.assert(
			fc.property(bentParts, (given) => {
				const values = evaluate(developedWidth, given);
				expect(Number(values.width)).toBeLessThan(given.legs.reduce((sum, leg) => sum + leg, 0));
				expect(brokenLimit(developedWidth, values)).toBeNull();
			})
		);
	});
});

describe('limits', () => {
	test('a leg of exactly its setbacks has no flat and is still possible', () => {
		const values = evaluate(developedWidth, { ...channel, legs: [1, 0.4, 1] });
		expect(list(values.flats)[1]).toBeCloseTo(0, 9);
		expect(brokenLimit(developedWidth, values)).toBeNull();
	});

	test('a leg shorter than its setbacks is refused with what to do', () => {
		const values = evaluate(developedWidth, { ...channel, legs: [1, 0.39, 1] });
		expect(brokenLimit(developedWidth, values)).toBe(
			'A leg is shorter than its setback: make it longer or the radius smaller.'
		);
	});

	test('a width of one’s own that is not less than the mold lines together is refused', () => {
		const own = evaluate(developedWidth, channel, { values: { width: 4.1 } });
		expect(brokenLimit(developedWidth, own)).toMatch(/^A developed width is less than/);
	});

	test.each([
		[{ legs: [1, 2], angles: [90, 90] }, 'give 3 legs for 2 bends'],
		[{ legs: [1, 2, 1], angles: [90] }, 'give 2 legs for 1 bend,'],
		[{ legs: [], angles: [90] }, 'give 2 legs for 1 bend,']
	])('%j: the number of legs is refused in one sentence', (wrong, says) => {
		expect(() => evaluate(developedWidth, { ...channel, ...wrong })).toThrow(says);
	});
});
