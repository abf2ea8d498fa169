import { describe, expect, test } from 'vitest';
import { angle } from '../../../src/lib/engine/quantity/kinds/angle.ts';
import { count } from '../../../src/lib/engine/quantity/kinds/count.ts';
import { density } from '../../../src/lib/engine/quantity/kinds/density.ts';
import { drill } from '../../../src/lib/engine/quantity/kinds/drill.ts';
import { fraction } from '../../../src/lib/engine/quantity/kinds/fraction.ts';
import { length } from '../../../src/lib/engine/quantity/kinds/length.ts';
import { listOf } from '../../../src/lib/engine/quantity/kinds/list.ts';
import { number } from '../../../src/lib/engine/quantity/kinds/number.ts';
import { rivetDiameter } from '../../../src/lib/engine/quantity/kinds/rivet-diameter.ts';
import { rivetLength } from '../../../src/lib/engine/quantity/kinds/rivet-length.ts';
import { weight } from '../../../src/lib/engine/quantity/kinds/weight.ts';
import { word } from '../../../src/lib/engine/quantity/kinds/word.ts';
import { asFraction, nearest64 } from '../../../src/lib/engine/quantity/sixty-fourths.ts';

const kinds = {
	length,
	fraction,
	'rivet-diameter': rivetDiameter,
	'rivet-length': rivetLength,
	drill,
	count,
	number,
	angle,
	weight
};

describe('a value as the shop writes it', () => {
	test.each([
		[0.05, 'length', 'in', '0.050 in'],
		[0.1875, 'length', 'in', '0.1875 in'],
		[0.2595, 'length', 'in', '0.2595 in'],
		[0.032 + 0.04, 'length', 'in', '0.072 in'],
		[0.28125, 'length', 'in', '0.2813 in'],
		[0.12344, 'length', 'in', '0.1234 in'],
		[12, 'length', 'in', '12.000 in'],
		[0, 'length', 'in', '0.000 in'],
		[-0, 'length', 'in', '0.000 in'],
		[-0.00001, 'length', 'in', '0.000 in'],
		[-0.05, 'length', 'in', '−0.050 in'],
		[0.5, 'length', 'mm', '12.7 mm'],
		[0.1285, 'length', 'mm', '3.264 mm'],
		[1, 'length', 'mm', '25.4 mm'],
		[0.375, 'fraction', 'in', '3/8 in'],
		[1.5, 'fraction', 'in', '1 1/2 in'],
		[2, 'fraction', 'in', '2 in'],
		[0, 'fraction', 'in', '0 in'],
		[0.3, 'fraction', 'in', '0.300 in'],
		[1 / 128, 'fraction', 'in', '0.0078 in'],
		[-0.375, 'fraction', 'in', '−0.375 in'],
		[0.375, 'fraction', 'mm', '9.525 mm'],
		[0.125, 'rivet-diameter', 'in', '1/8 in (−4)'],
		[3 / 32, 'rivet-diameter', 'in', '3/32 in (−3)'],
		[9 / 64, 'rivet-diameter', 'in', '9/64 in'],
		[0.125, 'rivet-diameter', 'mm', '3.175 mm (−4)'],
		[0.3125, 'rivet-length', 'in', '5/16 in (−5)'],
		[11 / 32, 'rivet-length', 'in', '11/32 in (−5.5)'],
		[21 / 64, 'rivet-length', 'in', '21/64 in'],
		[1.25, 'rivet-length', 'in', '1 1/4 in (−20)'],
		[0.3, 'rivet-length', 'in', '0.300 in'],
		[1 / 32, 'rivet-length', 'in', '1/32 in'],
		[6.25, 'rivet-length', 'in', '6 1/4 in'],
		[0, 'rivet-length', 'in', '0 in'],
		[-0.3125, 'rivet-length', 'in', '−0.3125 in'],
		[0.3125, 'rivet-length', 'mm', '7.938 mm (−5)'],
		[0.1285, 'drill', 'in', 'No. 30 (0.1285 in)'],
		[0.257, 'drill', 'in', 'letter F (0.257 in)'],
		[0.125, 'drill', 'in', '1/8 in (0.125 in)'],
		[0.13, 'drill', 'in', '0.130 in'],
		[0.1285, 'drill', 'mm', 'No. 30 (3.264 mm)'],
		[13, 'count', 'in', '13'],
		[7.7, 'count', 'in', '7.7'],
		[0.01743, 'number', 'in', '0.01743'],
		[0.5, 'number', 'mm', '0.5'],
		[2 / 3, 'number', 'in', '0.66667'],
		[45, 'angle', 'in', '45°'],
		[33.690067, 'angle', 'in', '33.69°'],
		[2.5, 'weight', 'mm', '2.5 lb']
	] as const)('%d as %s in %s is %s', (value, kind, units, text) => {
		expect(kinds[kind].write(value, units)).toBe(text);
	});

	test('words stand as they are', () => {
		expect(word.write('MS20470AD4-5')).toBe('MS20470AD4-5');
	});

	test.each([
		[[0.5, 0.75], 'length', 'in', '0.500, 0.750 in'],
		[[0.5, 1.125], 'fraction', 'in', '1/2, 1 1/8 in'],
		[[0.3125, 0.375], 'rivet-length', 'in', '5/16, 3/8 in'],
		[[0.5, 1], 'length', 'mm', '12.7, 25.4 mm'],
		[[0.1285, 0.13], 'drill', 'in', 'No. 30 (0.1285 in), 0.130 in'],
		[[45, 90], 'angle', 'in', '45, 90°'],
		[[3, 4], 'count', 'in', '3, 4'],
		[[], 'length', 'in', '']
	] as const)('the list %j as %s in %s is %s', (value, kind, units, text) => {
		expect(listOf(kinds[kind]).write(value, units)).toBe(text);
	});

	test('a density has its unit and is not converted', () => {
		expect(density.write(0.101, 'mm')).toBe('0.101 lb/in³');
	});

	test.each([NaN, Infinity])('%d is refused', (value) => {
		expect(() => length.write(value)).toThrow('not a finite number');
	});
});

test.each([
	[0.05, 'length', 'in', '0.050'],
	[0.5, 'length', 'mm', '12.7'],
	[0.3125, 'rivet-length', 'in', '5/16'],
	[0.1285, 'drill', 'in', '0.1285'],
	[45, 'angle', 'in', '45'],
	[-0.5, 'length', 'in', '−0.500']
] as const)('the number in %d as %s in %s is %s', (value, kind, units, text) => {
	expect(kinds[kind].number(value, units)).toBe(text);
});

test.each([
	[0.375, 0, 3, 8],
	[1.5, 1, 1, 2],
	[2, 2, 0, 1],
	[0, 0, 0, 1],
	[63 / 64, 0, 63, 64],
	[0.1 + 0.2 + 0.075, 0, 3, 8]
])('asFraction(%d)', (value, whole, numerator, denominator) => {
	expect(asFraction(value)).toEqual({ whole, numerator, denominator });
});

test.each([0.3, 1 / 128, 1 / 3, -0.375])('%d is not in 64ths', (value) => {
	expect(asFraction(value)).toBeNull();
});

test.each([
	[0.72, '≈ 23/32'],
	[0.71875, '23/32'],
	[1.72, '≈ 1 23/32'],
	[1 / 128, '≈ 1/64'],
	[0.0001, '≈ 0'],
	[0, '0'],
	[2, '2'],
	[-0.72, '≈ −23/32'],
	[-0.0001, '≈ 0']
])('%d in is %s', (value, text) => {
	expect(nearest64(value)).toBe(text);
});
