import { describe, expect, test } from 'vitest';
import { widthsFor } from '../../../src/lib/ui/collect/column-widths.ts';
import { rowWindow } from '../../../src/lib/ui/collect/row-window.ts';
import { segmentPaths, sizeOf } from '../../../src/lib/ui/collect/segment-paths.ts';
import { fromTable } from '../../../src/lib/ui/collect/table-keys.ts';
import { rowsOf, ticksFor } from '../../../src/lib/ui/report/spread.ts';

test.each([
	['ArrowDown', 1, 0],
	['ArrowUp', 0, 0],
	['ArrowRight', 0, 1],
	['End', 0, 11],
	['PageDown', 10, 0]
])('%s leads to row %i, column %i', (key, row, column) => {
	const size = { rows: 24, columns: 12 };
	expect(fromTable(key, { row: 0, column: 0 }, size)).toEqual({ row, column });
	expect(fromTable(key, { row: 0, column: 0 }, { rows: 0, columns: 12 })).toBeNull();
	expect(fromTable('x', { row: 0, column: 0 }, size)).toBeNull();
});

describe('a long table', () => {
	test('draws what is in sight, and is as high as all of it', () => {
		for (const scrolled of [0, 700, 2800, 5600 - 700]) {
			const { from, to, above, below } = rowWindow(200, scrolled, 700, 28);
			expect(above + (to - from) * 28 + below).toBe(200 * 28);
			expect(from * 28).toBeLessThanOrEqual(scrolled);
			expect(to * 28).toBeGreaterThanOrEqual(scrolled + 700);
			expect(to - from).toBeLessThan(40);
		}
	});

	test('of a class is drawn whole', () => {
		expect(rowWindow(24, 300, 200, 28)).toEqual({ from: 0, to: 24, above: 0, below: 0 });
	});
});

test('twenty tasks of six steps stand beside the entry on a page of 1280 pixels', () => {
	const widths = widthsFor(
		Array.from({ length: 20 }, () => 6),
		'dense'
	);
	expect(widths).toHaveLength(23);
	// 1280 less the margins, the entry with its gap, and what the box takes at its sides.
	expect(widths.reduce((sum, one) => sum + one, 0)).toBeLessThanOrEqual(1148 - 364 - 22);
	const phone = widthsFor([4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4], 'stacked');
	expect(phone.reduce((sum, one) => sum + one, 0)).toBeLessThanOrEqual(360 - 32 - 12);
});

test('a mark of two digits has room beside its segments', () => {
	for (const layout of ['across', 'dense'] as const) {
		const [, short = 0, long = 0] = widthsFor([9, 10], layout);
		const segments = sizeOf(10, layout).width - sizeOf(9, layout).width;
		// A digit is some 8 pixels wide.
		expect(long - short - segments).toBeGreaterThanOrEqual(8);
	}
});

test('segments of a state are one path, side by side', () => {
	const paths = segmentPaths(['right', 'lost', 'right', 'follows'], 'across');
	expect(paths.map(({ state }) => state)).toEqual(['right', 'lost', 'follows']);
	expect(paths[0]?.path).toBe('M0.5 0.5h5v8h-5zM14.5 0.5h5v8h-5z');
	expect(sizeOf(4, 'across')).toEqual({ width: 27, height: 9 });
	expect(sizeOf(4, 'stacked')).toEqual({ width: 15, height: 27 });
});

test('segments of a long task stand closer, in rows', () => {
	const [path] = segmentPaths(
		Array.from({ length: 18 }, () => 'right' as const),
		'across'
	);
	expect(path?.path).toContain('M56.5 0.5h5v6h-5zM0.5 8.5h5v6h-5z');
	expect(sizeOf(18, 'across')).toEqual({ width: 62, height: 15 });
	expect(sizeOf(18, 'stacked')).toEqual({ width: 14, height: 41 });
});

describe('marks over a scale', () => {
	test.each([
		[31, 50, [24, 28, 32, 36, 40, 44, 48, 50]],
		[0, 36, [0, 5, 10, 15, 20, 25, 30, 36]],
		[3, 3, [2, 3]]
	])('from %i to %i', (least, most, ticks) => {
		expect(ticksFor(least, most)).toEqual(ticks);
	});

	test('stand on one another where they would cover another', () => {
		const counts = [
			{ marks: 4, codes: ['A', 'B'] },
			{ marks: 5, codes: ['C'] }
		];
		const heads = rowsOf(counts, (marks) => marks * 2, 13);
		expect(heads.map(({ level }) => level)).toEqual([0, 1, 2]);
		expect(rowsOf(counts, (marks) => marks * 13, 13).map(({ level }) => level)).toEqual([0, 1, 0]);
	});
});
