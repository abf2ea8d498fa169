import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rivetNumber } from '../../../src/lib/engine/methods/rivet-number.ts';
import { rivetNumberReading } from '../../../src/lib/engine/methods/rivet-number-reading.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';

const rows = [
	{
		from: 'published, general handbook p. 5-56 and a drawing parts list',
		number: 'MS20426AD4-6',
		read: { head: 'countersunk', alloy: '2117', diameter: 0.125, length: 0.375 }
	},
	{
		from: 'published, FAA-H-8083-31B p. 4-31, Fig. 4-75',
		number: 'MS20426AD5-8',
		read: { head: 'countersunk', alloy: '2117', diameter: 5 / 32, length: 0.5 }
	},
	{
		from: 'rule application, NAVEDTRA 14315 ch. 3, Table 3-1',
		number: 'MS20470DD6-10',
		read: { head: 'universal', alloy: '2024', diameter: 0.1875, length: 0.625 }
	},
	{
		from: 'rule application, a half length, AC 43.13-1B par. 4-57a(4), p. 4-16',
		number: 'MS20470AD4-5.5',
		read: { head: 'universal', alloy: '2117', diameter: 0.125, length: 11 / 32 }
	}
];

test.each(rows)('$from: $number', ({ number, read }) => {
	expect(evaluate(rivetNumberReading, { number })).toMatchObject(read);
});

test('what is written is read back', () => {
	const given = fc.record({
		head: fc.constantFrom('universal', 'countersunk'),
		alloy: fc.constantFrom('1100', '2117', '2017', '2024', '5056'),
		D: fc.integer({ min: 2, max: 12 }).map((dash) => dash / 32),
		length: fc.integer({ min: 2, max: 32 }).map((dash) => dash / 16)
	});
	fc.assert(
		fc.property(given, ({ head, alloy, D, length }) => {
			const { number = '' } = evaluate(rivetNumber, { head, alloy, D, length });
			const read = evaluate(rivetNumberReading, { number });
			expect(read).toMatchObject({ head, alloy, diameter: D, length });
		})
	);
});

test.each(['', 'AD4-5', 'MS20470AD4', 'MS20470XX4-5', 'MS20430AD4-5', 'rivet'])(
	'%j is refused in one sentence',
	(number) => {
		expect(() => evaluate(rivetNumberReading, { number })).toThrow(/^[A-Z].*\.$/);
	}
);
