import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bendAllowance } from '../../../src/lib/engine/methods/bend-allowance.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { suspectAt } from '../../../src/lib/engine/trade/table/reading.ts';
import {
	allowances90,
	allowancesPerDegree
} from '../../../src/lib/engine/trade/tables/allowance-chart.ts';

function allowance(given: { R: number; T: number; angle: number }, slip?: string): number {
	const slips: Record<string, string> = slip ? { allowance: slip } : {};
	return Number(evaluate(bendAllowance, given, { slips }).allowance);
}

test.each([
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-64, Fig. 4-128 (published): channel, chart cell',
		given: { R: 0.156, T: 0.04, angle: 90 },
		BA: 0.273,
		within: 0.0005
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-73, Fig. 4-147 (published): 45°, chart row 0.051 times 45',
		given: { R: 0.1875, T: 0.05, angle: 45 },
		BA: 0.165,
		within: 0.0007
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-72, Fig. 4-146 (published): corner of a box',
		given: { R: 0.25, T: 0.063, angle: 90 },
		BA: 0.437,
		within: 0.0007
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-64 (rule application): Z section',
		given: { R: 0.125, T: 0.032, angle: 90 },
		BA: 0.2186,
		within: 0.00005
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-64 (rule application): hat section',
		given: { R: 0.16, T: 0.04, angle: 90 },
		BA: 0.2791,
		within: 0.00005
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-64 (rule application): closed bend of 120°',
		given: { R: 0.19, T: 0.05, angle: 120 },
		BA: 0.4442,
		within: 0.00005
	}
])('$from', ({ given, BA, within }) => {
	expect(Math.abs(allowance(given) - BA)).toBeLessThanOrEqual(within);
});

describe('misprints of FAA-H-8083-31B ch. 4 p. 4-64', () => {
	const channel = { R: 0.16, T: 0.04, angle: 90 };

	test('0.27 is printed for the channel: 0.2791 is right, 0.27 is one degree rounded too soon', () => {
		expect(allowance(channel)).toBeCloseTo(0.2791, 4);
		expect(allowance(channel, 'early')).toBeCloseTo(0.27, 9);
	});

	test('the substitution is printed without its outer brackets: N multiplies both terms', () => {
		const printed = evaluate(bendAllowance, channel, { slips: { forRadius: 'brackets' } });
		expect(printed.allowance).toBeCloseTo(0.01743 * 0.16 + 0.0078 * 0.04 * 90, 9);
		expect(allowance(channel)).toBeCloseTo((0.01743 * 0.16 + 0.0078 * 0.04) * 90, 9);
	});
});

describe('right by another method is told apart from wrong', () => {
	test('FAA-H-8083-31B ch. 4 p. 4-64 (published): quarter circle at mid thickness, 0.4327', () => {
		const given = { R: 0.25, T: 0.051, angle: 90 };
		expect(Math.abs(allowance(given, 'middle') - 0.4327)).toBeLessThan(0.0002);
		expect(allowance(given, 'middle') - allowance(given)).toBeGreaterThan(0.003);
	});

	test('NAVEDTRA 14119 p. 13-43 (published): radian method, 5.1 for a bar of 1/2', () => {
		expect(allowance({ R: 3, T: 0.5, angle: 90 }, 'middle')).toBeCloseTo(5.105, 3);
		expect(bendAllowance.slips.middle?.says).toMatch(/^Right by the mid-thickness formula/);
	});
});

describe('the printed chart (FAA-H-8083-31B Fig. 4-128)', () => {
	const cells = allowances90.cells.flatMap((row, i) =>
		row.flatMap((at90, j) => {
			const [thickness = NaN] = allowances90.rows.keys[i] ?? [];
			const [radius = NaN] = allowances90.columns.keys[j] ?? [];
			const perDegree = allowancesPerDegree.cells[i]?.[j] ?? null;
			expect(perDegree === null).toBe(at90 === null);
			if (at90 === null || perDegree === null) return [];
			const worked = allowance({ R: radius, T: thickness, angle: 90 });
			const fromDegree = perDegree * 90;
			return {
				thickness,
				radius,
				at90,
				perDegree,
				suspect: suspectAt(allowances90, i, j) !== undefined,
				worked,
				off: Math.max(Math.abs(at90 - worked), Math.abs(fromDegree - worked)),
				apart: Math.abs(at90 - fromDegree)
			};
		})
	);
	const sound = cells.filter(({ suspect }) => !suspect);
	const suspects = cells.filter(({ suspect }) => suspect);

	test('both figures of all 219 sound cells are within 0.0022 of the formula', () => {
		expect(sound).toHaveLength(219);
		for (const { off } of sound) expect(off).toBeLessThan(0.0022);
		for (const { apart } of sound) expect(apart).toBeLessThan(0.0009);
	});

	test('so an answer read off the chart is within the tolerance', () => {
		expect(Number(bendAllowance.steps.allowance.tolerance?.amount)).toBeGreaterThan(0.0022);
	});

	test('each of the ten suspects disagrees with the formula or with itself', () => {
		expect(suspects).toHaveLength(10);
		for (const { off, apart, thickness, radius } of suspects) {
			expect(off > 0.003 || apart > 0.0015, `${thickness} ${radius}`).toBe(true);
		}
	});

	test('the other figure of a suspect still fits, so the spoilt one is the misprint', () => {
		for (const { at90, perDegree, worked } of suspects) {
			const nearer = Math.min(Math.abs(at90 - worked), Math.abs(perDegree * 90 - worked));
			expect(nearer).toBeLessThan(0.0022);
		}
	});
});

test('an arc about 0.447 T from the inside face, in exact radians, agrees within 0.2 percent', () => {
	const bends = fc.record({
		R: fc.integer({ min: 1, max: 16 }).map((n) => n / 32),
		T: fc.integer({ min: 16, max: 125 }).map((n) => n / 1000),
		angle: fc.integer({ min: 1, max: 179 })
	});
	fc.assert(
		fc.property(bends, ({ R, T, angle }) => {
			const arc = (R + 0.447 * T) * ((angle * Math.PI) / 180);
			expect(Math.abs(allowance({ R, T, angle }) / arc - 1)).toBeLessThan(0.002);
		})
	);
});

test('a fold of 180° takes twice what a square bend does', () => {
	const bend = { R: 0.125, T: 0.04 };
	expect(allowance({ ...bend, angle: 180 })).toBeCloseTo(2 * allowance({ ...bend, angle: 90 }), 9);
});

test('the radian form is told as right by its formula: NAVEDTRA 14119 p. 13-43, example 1', () => {
	// R + T/2 = 3.25 in, 90° = 1.57 rad, printed 5.1 in.
	expect(allowance({ R: 3, T: 0.5, angle: 90 }, 'middle')).toBeCloseTo(5.105, 3);
	expect(bendAllowance.slips.middle?.says).toMatch(/^Right by the mid-thickness formula/);
});

test('the Navy’s constant is told as right by its formula', () => {
	// (0.0173 x 0.25 + 0.0078 x 0.050) x 90
	expect(allowance({ R: 0.25, T: 0.05, angle: 90 }, 'navy')).toBeCloseTo(0.42435, 6);
	expect(bendAllowance.slips.navy?.says).toMatch(/^Right by the Navy’s formula/);
});

test('a bend of 1° takes a ninetieth of a square one', () => {
	const bend = { R: 0.125, T: 0.04 };
	expect(allowance({ ...bend, angle: 1 }) * 90).toBeCloseTo(allowance({ ...bend, angle: 90 }), 9);
});
