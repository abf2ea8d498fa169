import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { setback } from '../../../src/lib/engine/methods/setback.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { kChart } from '../../../src/lib/engine/trade/tables/k-chart.ts';
import { centreAlongLeg } from './bend-by-coordinates.ts';

test.each([
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-63 (published): channel of 0.040',
		given: { R: 0.16, T: 0.04, angle: 90 },
		K: 1,
		SB: 0.2
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-73, Fig. 4-147 (published): open bend of 45°',
		given: { R: 0.1875, T: 0.05, angle: 45 },
		K: 0.41421,
		SB: 0.098
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-72, Fig. 4-146 (published): corner of a box',
		given: { R: 0.25, T: 0.063, angle: 90 },
		K: 1,
		SB: 0.313
	},
	{
		from: 'AC 43.13-1B par. 4-56b(2), Fig. 4-3, p. 4-14 (published): 45°',
		given: { R: 0.25, T: 0.064, angle: 45 },
		K: 0.41421,
		SB: 0.13
	},
	{
		from: 'FAA-H-8083-31B ch. 4 pp. 4-59, 4-63 (rule application): closed bend of 120°',
		given: { R: 0.19, T: 0.05, angle: 120 },
		K: 1.73205,
		SB: 0.4157
	}
])('$from', ({ given, K, SB }) => {
	const values = evaluate(setback, given);
	expect(Math.abs(Number(values.K) - K)).toBeLessThan(0.00001);
	expect(Math.abs(Number(values.setback) - SB)).toBeLessThan(0.0006);
});

test('FAA-H-8083-31B ch. 4 pp. 4-62, 4-63, Fig. 4-125: the two printed chart readings of one bend both miss', () => {
	const { setback: worked } = evaluate(setback, { R: 0.12, T: 0.063, angle: 135 });
	expect(worked).toBeCloseTo(0.4418, 4);
	// The text reads 0.435 off the setback chart, the figure 0.453: a chart is read to 0.02.
	for (const read of [0.435, 0.453]) {
		expect(Math.abs(Number(worked) - read)).toBeGreaterThan(0.001);
		expect(Math.abs(Number(worked) - read)).toBeLessThan(0.02);
	}
});

describe('K against the printed chart (FAA-H-8083-31B Fig. 4-122, AC 43.13-1B Table 4-7)', () => {
	const printedK = kChart.cells.flat().map(Number);
	const misprintedK = new Set(kChart.suspect.map(({ row }) => row));
	const rows = printedK.map((printed, i) => ({ N: i + 1, printed }));
	const K = (N: number) => Number(evaluate(setback, { R: 0.1, T: 0.1, angle: N }).K);
	/** The chart keeps four figures: thousandths up to 10, then hundredths. */
	const lastPlace = (printed: number) => (printed < 10 ? 0.001 : 0.01);

	test('179 degrees are printed, none for 180', () => {
		expect(rows).toHaveLength(179);
		expect(printedK.length).toBe(179);
	});

	test('every value but the two misprints agrees to its last place', () => {
		const off = rows.filter(({ N, printed }) => Math.abs(K(N) - printed) > lastPlace(printed));
		expect(off.map(({ N }) => N)).toEqual([159, 176]);
		expect([...misprintedK].sort()).toEqual([159, 176]);
	});

	test('to 168 degrees, all but 159 agree within 0.001, the tolerance of an answer', () => {
		for (const { N, printed } of rows.slice(0, 168)) {
			if (!misprintedK.has(N)) expect(Math.abs(K(N) - printed)).toBeLessThanOrEqual(0.001);
		}
	});

	test('the misprints are worked right', () => {
		expect(K(159)).toBeCloseTo(5.3955, 4);
		expect(K(176)).toBeCloseTo(28.6363, 4);
	});
});

test('from the mold point to under the centre of the radius, by coordinates', () => {
	const bends = fc.record({
		R: fc.integer({ min: 1, max: 32 }).map((n) => n / 32),
		T: fc.integer({ min: 12, max: 125 }).map((n) => n / 1000),
		angle: fc.integer({ min: 1, max: 175 })
	});
	fc.assert(
		fc.property(bends, ({ R, T, angle }) => {
			const worked = Number(evaluate(setback, { R, T, angle }).setback);
			expect(worked).toBeCloseTo(0 - centreAlongLeg(0, R, T, angle), 6);
		})
	);
});

test('a fold of 180° has no setback, and the sentence says how it is laid out', () => {
	expect(() => evaluate(setback, { R: 0.125, T: 0.04, angle: 180 })).toThrow(
		'A bend of 180° has no setback, because its mold lines never meet: lay it out by its flats and its bend allowance.'
	);
});

test.each([0, -30, 200, NaN])(
	'a bend of %d° has no setback, and the sentence says why',
	(angle) => {
		expect(() => evaluate(setback, { R: 0.125, T: 0.04, angle })).toThrow(
			'A bend angle counts from flat and lies between 0° and 180°.'
		);
	}
);
