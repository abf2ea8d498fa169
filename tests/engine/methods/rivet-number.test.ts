import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rivetNumber } from '../../../src/lib/engine/methods/rivet-number.ts';
import { normalPartNumber } from '../../../src/lib/engine/quantity/part-number.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { brokenLimit } from '../../../src/lib/engine/solver/limits.ts';

const rows = [
	{
		from: 'published, general handbook p. 5-56 and a drawing parts list: 0.125 by 0.375, countersunk',
		given: { head: 'countersunk', alloy: '2117', D: 0.125, length: 0.375 },
		number: 'MS20426AD4-6'
	},
	{
		from: 'published, FAA-H-8083-31B p. 4-31, Fig. 4-75: 5/32 by 1/2, countersunk',
		given: { head: 'countersunk', alloy: '2117', D: 5 / 32, length: 0.5 },
		number: 'MS20426AD5-8'
	},
	{
		from: 'rule application, NAVEDTRA 14315 ch. 3, Table 3-1: 3/16 by 5/8, 2024',
		given: { head: 'universal', alloy: '2024', D: 0.1875, length: 0.625 },
		number: 'MS20470DD6-10'
	}
];

test.each(rows)('$from', ({ given, number }) => {
	expect(evaluate(rivetNumber, given).number).toBe(number);
});

const heads = { universal: '470', countersunk: '426' };
const letters = { 1100: 'A', 2117: 'AD', 2017: 'D', 2024: 'DD', 5056: 'B' };

test('any rivet: spelt from its parts, and already in the normal form', () => {
	const given = fc.tuple(
		fc.constantFrom('universal', 'countersunk'),
		fc.constantFrom('1100', '2117', '2017', '2024', '5056'),
		fc.integer({ min: 2, max: 12 }),
		fc.integer({ min: 2, max: 32 })
	);
	fc.assert(
		fc.property(given, ([head, alloy, diameter, length]) => {
			const values = { head, alloy, D: diameter / 32, length: length / 16 };
			const spelt = ['MS20', heads[head], letters[alloy], diameter, '-', length].join('');
			const { number } = evaluate(rivetNumber, values);
			expect(number).toBe(spelt);
			expect(normalPartNumber(String(number))).toBe(spelt);
		})
	);
});

test('a size between two dash numbers is refused, a half length is not', () => {
	const broken = (D: number, length: number) =>
		brokenLimit(
			rivetNumber,
			evaluate(rivetNumber, { head: 'universal', alloy: '2117', D, length })
		);
	expect(broken(0.1, 0.375)).toMatch(/32nds/);
	expect(broken(0.125, 0.36)).toMatch(/16ths/);
	expect(broken(0.125, 11 / 32)).toBeNull();
});

test('a half length is written with .5 (AC 43.13-1B par. 4-57a(4))', () => {
	const given = { head: 'universal', alloy: '2117', D: 0.125, length: 9 / 32 };
	expect(evaluate(rivetNumber, given).number).toBe('MS20470AD4-4.5');
});

test('an alloy or head without a code is refused in one sentence', () => {
	const given = { head: 'universal', alloy: '2117', D: 0.125, length: 0.375 };
	expect(() => evaluate(rivetNumber, { ...given, alloy: '7050' })).toThrow(
		/has no row for 7050; it has 1100, /
	);
	expect(() => evaluate(rivetNumber, { ...given, head: 'brazier' })).toThrow(
		/has no row for brazier; it has universal, countersunk/
	);
});

test('the older designation is known as a slip, in the form it is read in', () => {
	const given = { head: 'universal', alloy: '2117', D: 0.125, length: 0.375 };
	const { number } = evaluate(rivetNumber, given, { slips: { number: 'olderStandard' } });
	expect(number).toBe('AN470AD4-6');
	expect(normalPartNumber('an 470 ad 4-6')).toBe(number);
});
