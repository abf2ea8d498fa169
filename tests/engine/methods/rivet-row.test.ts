import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rivetRow } from '../../../src/lib/engine/methods/rivet-row.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { brokenLimit } from '../../../src/lib/engine/solver/limits.ts';

const seam = { length: 10, endMargin: 0.25, greatestPitch: 0.75 };

test('rule application, FAA-H-8083-31B ch. 4 pp. 4-34, 4-35: a 10 in seam takes 14 rivets', () => {
	const values = evaluate(rivetRow, seam);
	expect(values).toMatchObject({ run: 9.5, spaces: 13, count: 14 });
	expect(values.pitch).toBeCloseTo(0.7308, 4);
});

/** Spaces found by adding one until none is too wide, in 64ths of an inch. */
function spacesByTrial(run: number, greatest: number): number {
	let spaces = 1;
	while (run > spaces * greatest) spaces++;
	return spaces;
}

const in64ths = fc.record({
	length: fc.integer({ min: 128, max: 48 * 64 }),
	endMargin: fc.integer({ min: 8, max: 48 }),
	greatestPitch: fc.integer({ min: 16, max: 128 })
});

test('stepped off hole by hole, the last one falls an end margin from the far edge', () => {
	fc.assert(
		fc.property(in64ths, ({ length, endMargin, greatestPitch }) => {
			const values = evaluate(rivetRow, {
				length: length / 64,
				endMargin: endMargin / 64,
				greatestPitch: greatestPitch / 64
			});
			const spaces = spacesByTrial(length - 2 * endMargin, greatestPitch);
			expect(values.spaces).toBe(spaces);
			expect(values.count).toBe(spaces + 1);

			const holes = [endMargin];
			while (holes.length <= spaces) {
				const left = spaces + 1 - holes.length;
				const last = holes.at(-1) ?? 0;
				holes.push(last + (length - endMargin - last) / left);
			}
			const positions = values.positions as readonly number[];
			expect(positions.length).toBe(holes.length);
			positions.forEach((at, i) => expect(at).toBeCloseTo((holes[i] ?? NaN) / 64, 9));
		})
	);
});

test('a run of whole greatest pitches takes no space more', () => {
	const values = evaluate(rivetRow, { ...seam, length: 9.5 });
	expect(values).toMatchObject({ run: 9, spaces: 12, count: 13, pitch: 0.75 });
});

test('a run shorter than one pitch takes two rivets', () => {
	const values = evaluate(rivetRow, { ...seam, length: 1 });
	expect(values).toMatchObject({ spaces: 1, count: 2, pitch: 0.5, positions: [0.25, 0.75] });
});

test('margins longer than the piece are refused with a sentence', () => {
	const values = evaluate(rivetRow, { ...seam, length: 1, endMargin: 1 });
	expect(brokenLimit(rivetRow, values)).toContain('make the margin smaller');
	expect(brokenLimit(rivetRow, evaluate(rivetRow, seam))).toBeNull();
});

test('margins that meet leave no pitch to divide', () => {
	expect(() => evaluate(rivetRow, { ...seam, length: 0.5 })).toThrow('“pitch”');
});
