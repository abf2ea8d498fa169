import { describe, expect, test } from 'vitest';
import { entryOf } from '../../../src/lib/engine/marking/answer.ts';
import { chanceOf } from '../../../src/lib/engine/marking/chance.ts';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';
import type { Value } from '../../../src/lib/engine/quantity/value.ts';
import { count, length, listOf, partNumber } from '../../../src/lib/engine/quantity/kinds.ts';
import type { Kind } from '../../../src/lib/engine/quantity/kinds/kind.ts';

await loadReader();

function chance(kind: Kind, text: string, reached: readonly Value[]): number {
	const entry = entryOf(kind.read(text));
	if (!entry) throw new Error(`not read: ${text}`);
	return chanceOf(kind, entry, reached);
}

describe('how likely a number is one of those that slips lead to', () => {
	// From 0.48 to 1.08 there is room for 600 numbers of three places.
	test('goes by how many numbers of its places there are about its own size', () => {
		expect(chance(length, '.720', [0.6, 0.7, 0.8])).toBeCloseTo(3 / 600, 9);
		expect(chance(length, '.72', [0.6])).toBeCloseTo(1 / 60, 9);
	});

	test('counts equal values once, and none that is far off or no number', () => {
		expect(chance(length, '.720', [0.6, 0.6, 0.60000001])).toBeCloseTo(1 / 600, 9);
		expect(chance(length, '.750', [0.5, 1.125, 0.1, 3, 'AD', [0.6]])).toBe(0);
		expect(chance(length, '.720', [0.481, 1.079, 3])).toBeCloseTo(2 / 600, 9);
	});

	test('takes more places than a shop carries for two tenths of a thousandth', () => {
		expect(chance(length, '.7200000', [0.6])).toBeCloseTo(0.0002 / 0.6, 9);
	});

	test('goes by the divisions of the rule of a number that is on one, sixteenths at least', () => {
		expect(chance(length, '3/4', [0.6])).toBeCloseTo(1 / 16 / 0.625, 9);
		expect(chance(length, '.750', [0.6])).toBeCloseTo(1 / 16 / 0.625, 9);
		const most = (1.5 * 25) / 32;
		expect(chance(length, '25/32', [0.6])).toBeCloseTo(1 / 32 / (most - most / 2.25), 9);
		expect(chance(length, '3/7', [0.4])).toBeCloseTo(0.0002 / ((3 / 7) * (1.5 - 1 / 1.5)), 9);
	});

	// From 4 to 9 there are five steps of one.
	test('goes by ones where whole numbers are wanted', () => {
		expect(chance(count, '6', [5, 7, 20])).toBeCloseTo(2 / 5, 9);
	});

	test('is nothing for zero, for lists and for words', () => {
		expect(chance(length, '0', [0, 0.1])).toBe(0);
		expect(chance(listOf(length), '.2, .3', [0.2, 0.3, [0.2, 0.3]])).toBe(0);
		expect(chance(partNumber, 'MS20470AD4-5', ['MS20470AD4-6'])).toBe(0);
	});
});
