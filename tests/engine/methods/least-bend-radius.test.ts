import { describe, expect, test } from 'vitest';
import { leastBendRadius } from '../../../src/lib/engine/methods/least-bend-radius.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { bendSheets } from '../../../src/lib/engine/trade/nose-bars.ts';
import { noseRadii } from '../../../src/lib/engine/trade/stock.ts';
import { leastRadii } from '../../../src/lib/engine/trade/tables/least-radius.ts';

const thicknesses = leastRadii.rows.keys.flat();
const alloys = leastRadii.columns.keys.flat();

function radius(alloy: string, T: number): number {
	return Number(evaluate(leastBendRadius, { alloy, T }, { values: { bar: 0 } }).radius);
}

test.each([
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-61 (published): 0.040 2024-T3 takes 0.16, or 5/32',
		given: { alloy: '2024-T3', T: 0.04 },
		chart: 0.16,
		in32nds: 5 / 32,
		bar: 5 / 32
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-61, Fig. 4-124 (rule application): 0.063 6061-T6',
		given: { alloy: '6061-T6', T: 0.063 },
		chart: 0.16,
		in32nds: 5 / 32,
		bar: 5 / 32
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-61, Fig. 4-124 (rule application): no 7/32 bar, so 1/4',
		given: { alloy: '2024-T3', T: 0.063 },
		chart: 0.22,
		in32nds: 7 / 32,
		bar: 1 / 4
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-61, Fig. 4-124 (rule application): the sharpest bar is duller than needed',
		given: { alloy: '5052-H34', T: 0.025 },
		chart: 0.03,
		in32nds: 1 / 32,
		bar: 1 / 16
	}
])('$from', ({ given, chart, in32nds, bar }) => {
	expect(evaluate(leastBendRadius, given)).toMatchObject({ radius: chart, in32nds, bar });
});

test('AC 43.13-1B Table 4-6, p. 4-14 (rule application) allows 0.032 to 0.096 for 5052-H34 of 0.064', () => {
	// Another table, in multiples of T; the chart of the handbook lies inside it here.
	expect(radius('5052-H34', 0.064)).toBeGreaterThanOrEqual(0.032);
	expect(radius('5052-H34', 0.064)).toBeLessThanOrEqual(0.096);
});

describe('the chart', () => {
	/** Two columns typed again, in hundredths, rows 0.012 to 0.375. */
	const typedAgain: Readonly<Record<string, string>> = {
		'6061-T6': '3 3 3 6 6 9 12 16 16 19 22 25 31 44 56 75 138 150',
		'2024-T3': '6 9 9 12 12 16 19 22 25 31 38 44 50 75 100 125 150 188'
	};

	test.each(Object.entries(typedAgain))('column %s as typed a second time', (alloy, hundredths) => {
		const column = thicknesses.map((T) => Math.round(radius(alloy, T) * 100));
		expect(column.join(' ')).toBe(hundredths);
	});

	test('thicker sheet never takes a smaller radius', () => {
		for (const alloy of alloys) {
			const column = thicknesses.map((T) => radius(alloy, T));
			expect(column).toEqual([...column].sort((a, b) => a - b));
		}
	});

	test('every printed radius is a 32nd cut or rounded to two places', () => {
		for (const printed of leastRadii.cells.flat().map(Number)) {
			const meant = Math.round(printed * 32) / 32;
			expect(Math.abs(printed - meant)).toBeLessThan(0.0051);
		}
	});

	test.each([
		[0.051, 0.05],
		[0.064, 0.063],
		[0.072, 0.071],
		[0.081, 0.08],
		[0.091, 0.09]
	])('%d of the older gauge series reads in the row of %d', (older, printed) => {
		for (const alloy of alloys) expect(radius(alloy, older)).toBe(radius(alloy, printed));
	});

	test('tempers of one column bend alike, and a small letter does no harm', () => {
		expect(radius('2024-T4', 0.05)).toBe(radius('2024-T3', 0.05));
		expect(radius('2024-t3', 0.05)).toBe(0.19);
	});

	test('an alloy or a thickness that is not in it is refused with what there is', () => {
		expect(() => radius('3003-H14', 0.04)).toThrow(
			'The chart has no column for 3003-H14; it has 5052-O'
		);
		expect(() => radius('2024-T3', 0.045)).toThrow('its rows are 0.012, 0.016');
	});

	test('beside the edge there is nothing to misread', () => {
		const slip = (id: string, alloy: string, T: number) =>
			evaluate(leastBendRadius, { alloy, T }, { slips: { radius: id } });
		expect(() => slip('rowUp', '2024-T3', 0.012)).toThrow('beyond the edge');
		expect(() => slip('columnLeft', '5052-O', 0.04)).toThrow('beyond the edge');
		expect(() => slip('columnRight', '2024-T6', 0.04)).toThrow('beyond the edge');
	});
});

describe('nose bars', () => {
	test('the bar is the first that is not under the radius, found by trying each', () => {
		for (const alloy of alloys) {
			for (const T of thicknesses) {
				const thirtySeconds = Math.round(radius(alloy, T) * 32);
				const allowed = noseRadii.filter((bar) => Math.round(bar * 32) >= thirtySeconds);
				const bar = () => evaluate(leastBendRadius, { alloy, T }).bar;
				if (allowed.length > 0) expect(bar()).toBe(Math.min(...allowed));
				else expect(bar).toThrow('wrap the nose with shims');
			}
		}
	});

	test('no stocked sheet is given a bar sharper than the chart allows', () => {
		for (const { alloy, T, bars } of bendSheets) {
			for (const bar of bars) expect(bar).toBeGreaterThan(radius(alloy, T) - 0.005);
		}
	});
});
