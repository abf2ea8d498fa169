import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rivetsEachSide } from '../../../src/lib/engine/methods/rivets-each-side.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';

test('AC 43.13-1B Fig. 4-20, p. 4-41 (published, before its reduction for frames): 0.6 x 6.2 = 3.72, so 4', () => {
	const values = evaluate(rivetsEachSide, { T: 0.04, D: 1 / 8, width: 0.6 });
	expect(values).toMatchObject({ perInch: 6.2, eachSide: 4, total: 8 });
});

test('AC 43.13-1B par. 4-58g (published, before its reduction for laps): 4.9 per inch, 10 in wide', () => {
	const values = evaluate(rivetsEachSide, { T: 0.032, D: 1 / 8, width: 10 });
	expect(values).toMatchObject({ perInch: 4.9, eachSide: 49, total: 98 });
});

/** Tenths of a rivet per inch: thickness, diameter in 32nds, count; typed again. */
const cells = [
	[0.04, 4, 62],
	[0.05, 5, 51],
	[0.064, 4, 99],
	[0.064, 6, 45],
	[0.08, 6, 57],
	[0.09, 5, 91],
	[0.128, 8, 49]
] as const;

test('rivets set one by one until the width is covered, in whole numbers, make the same count', () => {
	fc.assert(
		fc.property(fc.constantFrom(...cells), fc.integer({ min: 1, max: 80 }), (cell, quarters) => {
			const [T, dash, tenths] = cell;
			let rivets = 0;
			while (rivets * 40 < tenths * quarters) rivets++;
			const values = evaluate(rivetsEachSide, { T, D: dash / 32, width: quarters / 4 });
			expect(values).toMatchObject({ eachSide: rivets, total: 2 * rivets });
		})
	);
});

test('a rivet or a sheet that the table does not have is refused', () => {
	const read = (T: number, D: number) => () => evaluate(rivetsEachSide, { T, D, width: 4 });
	expect(read(0.09, 1 / 8)).toThrow('prints nothing for');
	expect(read(0.045, 1 / 8)).toThrow('its rows are 0.016');
});
