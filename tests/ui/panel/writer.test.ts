import { describe, expect, test } from 'vitest';
import { keptEntry, shownEntry, writerFor } from '../../../src/lib/ui/panel/writer.ts';

describe('the lengths of a panel in the units that were chosen', () => {
	test.each([
		// 13 11/16 × 25.4 = 347.6625; 0.032 × 25.4 = 0.8128.
		['in', '13 11/16', '13 11/16 in', '0.032 in', '13.688 (13 11/16)'],
		['mm', '347.7', '347.7 mm', '0.81 mm', '347.7']
	] as const)('%s', (units, bare, size, gauge, place) => {
		const write = writerFor(units);
		expect(write.bare(13.6875)).toBe(bare);
		expect(write.size(13.6875)).toBe(size);
		expect(write.gauge(0.032)).toBe(gauge);
		expect(write.place(13.6875)).toBe(place);
	});

	test('the sizes in a sentence', () => {
		const sentence =
			'Frame 2, edge: 0.25 in at A1 to B12 is under 1 1/2 in; set it 1/8 in to the left.';
		expect(writerFor('in').says(sentence)).toBe(sentence);
		expect(writerFor('mm').says(sentence)).toBe(
			'Frame 2, edge: 6.35 mm at A1 to B12 is under 38.1 mm; set it 3.18 mm to the left.'
		);
	});

	test.each([
		['19', '19 mm', '19'],
		['12.7, 25.4', '12.7 mm, 25.4 mm', '12.7, 25.4'],
		['3/4 in', '3/4 in', '3/4 in'],
		['19 mm', '19 mm', '19'],
		['', '', ''],
		['1 ', '1  mm', '1 ']
	])('typed in millimetres, “%s” is kept as “%s”', (typed, kept, shown) => {
		expect(keptEntry(typed, 'mm')).toBe(kept);
		expect(shownEntry(kept, 'mm')).toBe(shown);
		expect(keptEntry(typed, 'in')).toBe(typed);
		expect(shownEntry(typed, 'in')).toBe(typed);
	});

	test.each([
		['22', '558.8'],
		['1 3/4', '44.45'],
		['3/4', '19.05'],
		['0.032', '0.81'],
		['1, 2.5', '25.4, 63.5'],
		['1/0', '1/0'],
		['1/', '1/']
	])('bare inches “%s” are shown as “%s”', (kept, shown) => {
		expect(shownEntry(kept, 'mm')).toBe(shown);
	});
});
