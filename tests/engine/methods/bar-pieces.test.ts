import fc from 'fast-check';
import { expect, test } from 'vitest';
import { barPieces } from '../../../src/lib/engine/methods/bar-pieces.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { brokenLimit } from '../../../src/lib/engine/solver/limits.ts';

test('rule application, plain arithmetic: 12 in pieces, 1/16 kerf, from a 144 in bar', () => {
	const given = { bar: 144, piece: 12, kerf: 1 / 16 };
	expect(evaluate(barPieces, given)).toMatchObject({ count: 11, remnant: 11.3125 });
	expect(evaluate(barPieces, given, { slips: { count: 'noKerf' } }).count).toBe(12);
});

test('rule application, plain arithmetic: the last of 12 pieces ends at the end of a 96 in bar', () => {
	const given = { bar: 96, piece: 7.9375, kerf: 1 / 16 };
	expect(evaluate(barPieces, given)).toMatchObject({ count: 12, remnant: 0 });
	expect(evaluate(barPieces, given, { slips: { count: 'noKerf' } }).count).toBe(12);
});

/** Pieces cut one after another, in 32nds; a last cut may find less metal than the kerf. */
function sawn(bar: number, piece: number, kerf: number): { count: number; remnant: number } {
	let [count, left] = [0, bar];
	while (left >= piece) {
		left = Math.max(0, left - piece - kerf);
		count++;
	}
	return { count, remnant: left };
}

test('pieces sawn off one by one make the same number and leave the same remnant', () => {
	const in32nds = fc.record({
		bar: fc.integer({ min: 600, max: 4608 }),
		piece: fc.integer({ min: 16, max: 600 }),
		kerf: fc.integer({ min: 0, max: 4 })
	});
	fc.assert(
		fc.property(in32nds, ({ bar, piece, kerf }) => {
			const values = evaluate(barPieces, { bar: bar / 32, piece: piece / 32, kerf: kerf / 32 });
			const { count, remnant } = sawn(bar, piece, kerf);
			expect(values.count).toBe(count);
			expect(values.remnant).toBeCloseTo(remnant / 32, 9);
		})
	);
});

test('a piece as long as the bar needs no cut at all', () => {
	expect(evaluate(barPieces, { bar: 12, piece: 12, kerf: 1 / 8 })).toMatchObject({
		count: 1,
		remnant: 0
	});
});

test('a bar too short for one piece is refused with a sentence', () => {
	const values = evaluate(barPieces, { bar: 11.9, piece: 12, kerf: 1 / 16 });
	expect(brokenLimit(barPieces, values)).toContain('take a longer bar');
});
