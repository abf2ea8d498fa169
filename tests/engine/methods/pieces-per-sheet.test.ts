import fc from 'fast-check';
import { expect, test } from 'vitest';
import { piecesPerSheet } from '../../../src/lib/engine/methods/pieces-per-sheet.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { brokenLimit } from '../../../src/lib/engine/solver/limits.ts';

/*
 * The examples were computed with an exact program for cuts from edge to edge. This method lays
 * every blank one way, so only the results for one orientation apply: mixed layouts make 87 of
 * 7 × 11 in a 48 × 144 sheet, and 19 of 12 × 16 with a 1/16 kerf in a 48 × 96 sheet.
 */
test('rule application, plain arithmetic: 7 × 11 blanks from a 48 × 144 sheet', () => {
	const values = evaluate(piecesPerSheet, {
		sheetLength: 144,
		sheetWidth: 48,
		pieceLength: 11,
		pieceWidth: 7,
		kerf: 0
	});
	expect(values).toMatchObject({ lengthwise: 78, crosswise: 80, count: 80 });
});

const sixteen = { sheetLength: 96, sheetWidth: 48, pieceLength: 16, pieceWidth: 12 };

test('rule application, plain arithmetic: 12 × 16 blanks without a kerf fill a 48 × 96 sheet', () => {
	expect(evaluate(piecesPerSheet, { ...sixteen, kerf: 0 }).count).toBe(24);
});

test('with a 1/16 kerf the same blanks lose a row each way, and stay under the mixed layout', () => {
	const values = evaluate(piecesPerSheet, { ...sixteen, kerf: 1 / 16 });
	expect(values).toMatchObject({ lengthwise: 15, crosswise: 14, count: 15 });
	expect(values.count).toBeLessThanOrEqual(19);
});

/** Pieces cut off a strip one after another; the saw takes its kerf only while metal is left. */
function cutOff(stock: number, piece: number, kerf: number): number {
	let pieces = 0;
	for (let left = stock; left >= piece; left -= piece + kerf) pieces++;
	return pieces;
}

test('strips cut one by one, and every strip into blanks, make the same number', () => {
	const in16ths = fc.record({
		sheetLength: fc.integer({ min: 400, max: 2304 }),
		sheetWidth: fc.integer({ min: 300, max: 768 }),
		pieceLength: fc.integer({ min: 8, max: 288 }),
		pieceWidth: fc.integer({ min: 8, max: 288 }),
		kerf: fc.integer({ min: 0, max: 2 })
	});
	fc.assert(
		fc.property(in16ths, (given) => {
			const inches = Object.fromEntries(Object.entries(given).map(([key, n]) => [key, n / 16]));
			const values = evaluate(piecesPerSheet, inches);
			const { sheetLength, sheetWidth, pieceLength, pieceWidth, kerf } = given;
			const along = cutOff(sheetWidth, pieceWidth, kerf) * cutOff(sheetLength, pieceLength, kerf);
			const turned = cutOff(sheetWidth, pieceLength, kerf) * cutOff(sheetLength, pieceWidth, kerf);
			expect(values).toMatchObject({ lengthwise: along, crosswise: turned });
			expect(values.count).toBe(along > turned ? along : turned);
		})
	);
});

test('a blank that fits only when it is turned still counts', () => {
	const values = evaluate(piecesPerSheet, {
		sheetLength: 48,
		sheetWidth: 24,
		pieceLength: 20,
		pieceWidth: 30,
		kerf: 0
	});
	expect(values).toMatchObject({ lengthwise: 0, crosswise: 1, count: 1 });
	expect(brokenLimit(piecesPerSheet, values)).toBeNull();
});

test('a blank larger than the sheet is refused with a sentence', () => {
	const values = evaluate(piecesPerSheet, { ...sixteen, pieceLength: 97, kerf: 0 });
	expect(brokenLimit(piecesPerSheet, values)).toContain('does not fit the sheet');
});
