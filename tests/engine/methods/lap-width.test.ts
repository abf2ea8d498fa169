import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lapWidth } from '../../../src/lib/engine/methods/lap-width.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { brokenLimit } from '../../../src/lib/engine/solver/limits.ts';

const eighth = { D: 1 / 8, head: 'protruding', rows: 2, pitch: 0.75 };

test('rule application, FAA-H-8083-31B ch. 4 p. 4-34: rows of a 3/4 pitch stand 0.5625 apart', () => {
	const values = evaluate(lapWidth, eighth);
	expect(values).toMatchObject({ byPitch: 0.5625, closest: 0.3125, rowsApart: 0.5625 });
});

test('rule application, TM 10-5410-229-13&P par. 5-6: a patch over a 1 in hole is 2.625 wide', () => {
	const each = evaluate(lapWidth, { ...eighth, pitch: 0.375 });
	expect(each).toMatchObject({ edge: 0.25, rowsApart: 0.3125, width: 0.8125 });
	expect(1 + 2 * Number(each.width)).toBe(2.625);
});

/** Rows stepped off across the lap, all in 128ths of an inch. */
function lapByRows(dash: number, flush: boolean, rows: number, pitch: number): number {
	const D = dash * 4;
	const edge = flush ? (D * 5) / 2 : D * 2;
	let across = edge;
	for (let row = 2; row <= rows; row++)
		across += pitch * 3 > D * 10 ? (pitch * 3) / 4 : (D * 5) / 2;
	return across + edge;
}

test('the lap is as wide as its rows stepped off one by one', () => {
	const lap = fc.record({
		dash: fc.constantFrom(3, 4, 5, 6, 8),
		flush: fc.boolean(),
		rows: fc.integer({ min: 1, max: 3 }),
		pitch: fc.integer({ min: 36, max: 256 })
	});
	fc.assert(
		fc.property(lap, ({ dash, flush, rows, pitch }) => {
			const head = flush ? 'countersunk' : 'protruding';
			const values = evaluate(lapWidth, { D: dash / 32, head, rows, pitch: pitch / 128 });
			expect(values.width).toBeCloseTo(lapByRows(dash, flush, rows, pitch) / 128, 12);
		})
	);
});

test('a lap without rows is refused with a sentence', () => {
	expect(brokenLimit(lapWidth, evaluate(lapWidth, { ...eighth, rows: 0 }))).toContain('1 or more');
	expect(brokenLimit(lapWidth, evaluate(lapWidth, { ...eighth, rows: 1 }))).toBeNull();
});
