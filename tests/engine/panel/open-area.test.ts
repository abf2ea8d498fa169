import { describe, expect, test } from 'vitest';
import { openArea } from '../../../src/lib/engine/panel/open-area.ts';
import { planPanel } from '../../../src/lib/engine/panel/plan.ts';

const round = ([x, y]: [number, number], diameter: number) => ({ x, y, diameter });
const box = (x: number, y: number, length: number, width: number) => ({ x, y, length, width });

async function openOf(...cutouts: object[]): Promise<number> {
	const panel = { length: '20in', width: '10in', thickness: '0.032in', alloy: '2024-T3' };
	return openArea((await planPanel({ panel, cutouts })).job);
}

describe('what openings take from a panel', () => {
	test('each by its own size', async () => {
		expect(await openOf()).toBe(0);
		expect(await openOf(box(2, 2, 3, 4))).toBe(12);
		expect(await openOf(round([10, 5], 4))).toBeCloseTo(4 * Math.PI, 9);
		expect(await openOf(box(2, 2, 3, 4), round([10, 5], 4))).toBeCloseTo(12 + 4 * Math.PI, 9);
		// One above the other: neither hides the other.
		expect(await openOf(box(2, 1, 3, 2), box(2, 6, 3, 2))).toBe(12);
	});

	test('metal that two share is missing once', async () => {
		expect(await openOf(box(2, 2, 6, 2), box(2, 2, 2, 6))).toBe(12 + 12 - 4);
		expect(await openOf(box(2, 2, 6, 4), box(3, 3, 1, 1))).toBe(24);
		expect(await openOf(round([10, 5], 4), round([10, 5], 2))).toBeCloseTo(4 * Math.PI, 4);
		// A slot with round ends: 3 in between the centres, 2 in wide.
		const slot = [box(5, 4, 3, 2), round([5, 5], 2), round([8, 5], 2)];
		expect(await openOf(...slot)).toBeCloseTo(6 + Math.PI, 4);
		// Two circles of 1 in radius, their centres 1 in apart: the lens they share.
		const lens = (2 * Math.PI) / 3 - Math.sqrt(3) / 2;
		expect(await openOf(round([5, 5], 2), round([6, 5], 2))).toBeCloseTo(2 * Math.PI - lens, 4);
	});

	test('past an edge there is no metal to miss', async () => {
		expect(await openOf(box(18, 8, 4, 4))).toBe(4);
		expect(await openOf(round([0, 5], 4))).toBeCloseTo(2 * Math.PI, 4);
		expect(await openOf(round([20, 10], 4))).toBeCloseTo(Math.PI, 4);
	});
});
