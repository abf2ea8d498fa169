import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
	decimalText,
	endsWithin,
	type Exact,
	exactly,
	fromDigits,
	mixedText,
	ratio
} from '../../../src/lib/engine/quantity/exact.ts';

describe('the rational meant by a computed float', () => {
	test.each([
		[0.032 + 0.04, 72n, 1000n],
		[0.1 + 0.2, 3n, 10n],
		[3 * 0.0625, 3n, 16n],
		[1 / 64, 1n, 64n],
		[12345678.0625, 197530849n, 16n],
		[-0.375, -3n, 8n],
		[-0, 0n, 1n],
		[2 ** 60, 2n ** 60n, 1n],
		[1 / 3, 333333333n, 1_000_000_000n]
	])('%d', (value, top, bottom) => {
		expect(exactly(value).equals(ratio(top, bottom))).toBe(true);
	});

	test.each([NaN, Infinity, -Infinity])('%d is refused', (value) => {
		expect(() => exactly(value)).toThrow('not a finite number');
	});

	test('is within half of 1e-9', () => {
		fc.assert(
			fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
				expect(Math.abs(exactly(value).valueOf() - value)).toBeLessThanOrEqual(5.01e-10);
			})
		);
	});
});

describe('arithmetic agrees with fraction.js', () => {
	const part = fc.bigInt({ min: -(10n ** 20n), max: 10n ** 20n });
	const below = part.filter((value) => value !== 0n);
	const text = (value: Exact) => `${value.s * value.n}/${value.d}`;
	const theirs = (value: Fraction) => `${value.s * value.n}/${value.d}`;

	test('of two rationals', () => {
		fc.assert(
			fc.property(part, below, part, below, (a, b, c, d) => {
				const [one, other] = [ratio(a, b), ratio(c, d)];
				const [first, second] = [new Fraction(a, b), new Fraction(c, d)];
				expect(text(one)).toBe(theirs(first));
				expect(text(one.add(other))).toBe(theirs(first.add(second)));
				expect(text(one.sub(other))).toBe(theirs(first.sub(second)));
				expect(text(one.mul(other))).toBe(theirs(first.mul(second)));
				if (c !== 0n) expect(text(one.div(other))).toBe(theirs(first.div(second)));
				expect(one.compare(other)).toBe(first.compare(second));
				expect(one.equals(other)).toBe(first.equals(second));
				expect(text(one.abs())).toBe(theirs(first.abs()));
				expect(one.valueOf()).toBe(first.valueOf());
			})
		);
	});

	test('a whole number or a float may be the other', () => {
		expect(text(ratio(5n, 32n).mul(32))).toBe('5/1');
		expect(text(ratio(5n, 32n).div(0.5))).toBe('5/16');
		expect(ratio(3n, 8n).compare(0.375)).toBe(0);
		expect(ratio(-3n, 8n).compare(0)).toBe(-1);
	});

	test('nothing is divided by zero', () => {
		expect(() => ratio(1n, 0n)).toThrow(RangeError);
		expect(() => ratio(1n).div(0)).toThrow(RangeError);
	});
});

describe('digits', () => {
	test.each([
		['5', '', 0, 5n, 1n],
		['', '5', 0, 1n, 2n],
		['3', '5', -2, 35n, 1000n],
		['3', '5', 3, 3500n, 1n],
		['', '', 0, 0n, 1n]
	])('%s.%se%d', (whole, decimals, power, top, bottom) => {
		expect(fromDigits(whole, decimals, power).equals(ratio(top, bottom))).toBe(true);
	});
});

describe('decimal text', () => {
	test.each([
		[ratio(9n, 32n), 3, 4, '0.2813'],
		[ratio(1n, 20n), 3, 4, '0.050'],
		[ratio(3n, 16n), 3, 4, '0.1875'],
		[ratio(49999n, 1_000_000n), 3, 4, '0.050'],
		[ratio(5n, 100_000n), 0, 4, '0.0001'],
		[ratio(4n, 100_000n), 0, 4, '0'],
		[ratio(-4n, 100_000n), 0, 4, '0'],
		[ratio(-5n, 100_000n), 0, 4, '−0.0001'],
		[ratio(-3n, 8n), 0, 2, '−0.38'],
		[ratio(12n), 3, 4, '12.000'],
		[ratio(12n), 0, 4, '12'],
		[ratio(100n), 0, 0, '100'],
		[ratio(999_999n, 1_000_000n), 0, 4, '1']
	])('%s with %d to %d places is %s', (value, least, most, text) => {
		expect(decimalText(value, least, most)).toBe(text);
	});
});

test('a fraction ends only where its digits do', () => {
	expect(endsWithin(ratio(1n, 8n), 3)).toBe(true);
	expect(endsWithin(ratio(1n, 8n), 2)).toBe(false);
	expect(endsWithin(ratio(1n, 3n), 12)).toBe(false);
});

test.each([
	[ratio(5n, 16n), '5/16'],
	[ratio(3n, 2n), '1 1/2'],
	[ratio(3n), '3'],
	[ratio(0n), '0']
])('%s is written %s', (value, text) => {
	expect(mixedText(value)).toBe(text);
});
