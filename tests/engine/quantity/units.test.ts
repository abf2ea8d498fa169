import { expect, test } from 'vitest';
import { ratio } from '../../../src/lib/engine/quantity/exact.ts';
import { angle } from '../../../src/lib/engine/quantity/kinds/angle.ts';
import '../../../src/lib/engine/quantity/kinds/all.ts';
import { density } from '../../../src/lib/engine/quantity/kinds/density.ts';
import { length } from '../../../src/lib/engine/quantity/kinds/length.ts';
import { weight } from '../../../src/lib/engine/quantity/kinds/weight.ts';
import { unitOf, unitSpelt } from '../../../src/lib/engine/quantity/units.ts';

test('25.4 mm are an inch and 0.45359237 kg a pound, exactly', () => {
	expect(unitOf(length.dimension, 'mm').size.mul(ratio(254n, 10n)).equals(1)).toBe(true);
	expect(unitOf(weight.dimension, 'kg').size.mul(ratio(45_359_237n, 100_000_000n)).equals(1)).toBe(
		true
	);
	expect(
		unitOf(weight.dimension, 'g').size.mul(1000).equals(unitOf(weight.dimension, 'kg').size)
	).toBe(true);
});

test('a cubic inch of 1 g/cm³ weighs 16.387064 g', () => {
	const grams = unitOf(density.dimension, 'g/cm³').size.div(unitOf(weight.dimension, 'g').size);
	expect(grams.equals(ratio(16_387_064n, 1_000_000n))).toBe(true);
});

test('half a turn is pi radians', () => {
	expect(unitOf(angle.dimension, 'rad').size.valueOf() * Math.PI).toBeCloseTo(180, 12);
});

test('a quote is a length or part of a degree, as wanted', () => {
	expect(unitSpelt('"', length.dimension)?.symbol).toBe('in');
	expect(unitSpelt('"', angle.dimension)?.symbol).toBe('″');
	expect(unitSpelt("'", weight.dimension)?.dimension).toBe(length.dimension);
});

test.each(['', 'x', 'constructor', '__proto__', 'tostring'])('%j is no unit', (spelling) => {
	expect(unitSpelt(spelling, length.dimension)).toBeUndefined();
});
