import { expect, test } from 'vitest';
import { sheetWeight } from '../../../src/lib/engine/methods/sheet-weight.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { TradeError } from '../../../src/lib/engine/solver/trade-function.ts';

const sheet = { length: 144, width: 48, T: 0.032, alloy: '2024-T3' };

test('rule application, length × width × thickness × density: 48 × 144 × 0.032 of 2024', () => {
	expect(evaluate(sheetWeight, sheet).weight).toBeCloseTo(22.118, 3);
});

/** Nominal densities read off the design manual's table 4.3, in thousandths of lb/in³. */
const table = { '1100-O': 98, '2014-T6': 101, '2024-T3': 100, '3003-H14': 99, '5052-H32': 97 };

/** By the square foot: 144 square inches, a thousandth of an inch at a time. */
function byTheSquareFoot(feetLong: number, feetWide: number, mils: number, thousandths: number) {
	return (feetLong * feetWide * 144 * mils * thousandths) / 1_000_000;
}

test.each(Object.entries(table))('%s sheet, by the square foot', (alloy, density) => {
	for (const [long, wide] of [
		[4, 2],
		[8, 3],
		[8, 4],
		[12, 4]
	] as const) {
		for (const mils of [16, 25, 32, 40, 63, 90]) {
			const given = { length: long * 12, width: wide * 12, T: mils / 1000, alloy };
			const wanted = byTheSquareFoot(long, wide, mils, density);
			expect(evaluate(sheetWeight, given).weight).toBeCloseTo(wanted, 9);
		}
	}
});

test('aluminium of specific gravity 2.7 (FAA-H-8083-30B p. 5-2) is within 3 percent', () => {
	const water = 62.4 / 1728;
	const byGravity = 144 * 48 * 0.032 * 2.7 * water;
	expect(Number(evaluate(sheetWeight, sheet).weight) / byGravity).toBeCloseTo(1, 1);
	expect(Math.abs(Number(evaluate(sheetWeight, sheet).weight) / byGravity - 1)).toBeLessThan(0.03);
});

test('the temper makes no difference', () => {
	expect(evaluate(sheetWeight, { ...sheet, alloy: '2024' })).toMatchObject({ density: 0.1 });
});

test('an alloy without a density is refused with a sentence', () => {
	expect(() => evaluate(sheetWeight, { ...sheet, alloy: '9999' })).toThrow(TradeError);
});
