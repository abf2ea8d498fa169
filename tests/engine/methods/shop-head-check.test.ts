import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shopHeadCheck } from '../../../src/lib/engine/methods/shop-head-check.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';

test('rule application, FAA-H-8083-31B p. 4-32, Fig. 4-76: limits of a 1/8 rivet', () => {
	const values = evaluate(shopHeadCheck, { D: 1 / 8, width: 0.19, height: 0.06 });
	const limits = {
		leastWidth: 0.15625,
		mostWidth: 0.2075,
		leastHeight: 0.04125,
		mostHeight: 0.0825
	};
	for (const [key, value] of Object.entries(limits)) expect(values[key]).toBeCloseTo(value, 12);
});

const heads = [
	{ head: 'the wanted head', width: 0.188, height: 0.063, judgement: 'accept' },
	{ head: 'too narrow and too high', width: 0.14, height: 0.1, judgement: 'drive more' },
	{ head: 'too high only', width: 0.16, height: 0.088, judgement: 'drive more' },
	{ head: 'too narrow only', width: 0.15, height: 0.08, judgement: 'drive more' },
	{
		head: 'too flat (replaced by Fig. 4-97 case C, p. 4-44)',
		width: 0.2,
		height: 0.035,
		judgement: 'replace'
	},
	{ head: 'too wide only', width: 0.215, height: 0.05, judgement: 'replace' },
	{ head: 'too narrow and too flat', width: 0.15, height: 0.035, judgement: 'replace' },
	{ head: 'too wide and too high', width: 0.215, height: 0.09, judgement: 'replace' }
];

test.each(heads)('1/8 rivet, $head: $judgement', ({ width, height, judgement }) => {
	expect(evaluate(shopHeadCheck, { D: 1 / 8, width, height }).judgement).toBe(judgement);
});

test('a size on the limit is allowed: 1/4 rivet, 0.415 in is 1.66 D and 0.165 in is 0.66 D', () => {
	const judged = (width: number, height: number) =>
		evaluate(shopHeadCheck, { D: 1 / 4, width, height }).judgement;
	expect(judged(0.415, 0.165)).toBe('accept');
	expect(judged(0.416, 0.165)).toBe('replace');
	expect(judged(0.415, 0.166)).toBe('drive more');
});

/** The same decision in whole 320,000ths of an inch: 0.001 in is 320, D is 10,000 a dash number. */
function judge(dash: number, widthThousandths: number, heightThousandths: number): string {
	const [D, width, height] = [10_000 * dash, 320 * widthThousandths, 320 * heightThousandths];
	if (100 * width > 166 * D) return 'replace';
	if (100 * height < 33 * D) return 'replace';
	if (100 * width < 125 * D) return 'drive more';
	return 100 * height > 66 * D ? 'drive more' : 'accept';
}

test('any head in thousandths, judged in whole numbers', () => {
	const dashes = fc.constantFrom(3, 4, 5, 6, 8);
	const width = fc.integer({ min: 90, max: 450 });
	fc.assert(
		fc.property(dashes, width, fc.integer({ min: 20, max: 200 }), (dash, wide, high) => {
			const given = { D: dash / 32, width: wide / 1000, height: high / 1000 };
			expect(evaluate(shopHeadCheck, given).judgement).toBe(judge(dash, wide, high));
		}),
		{ numRuns: 500 }
	);
});
