import { expect, test } from 'vitest';
import type { Draw } from '../../../src/lib/engine/families/family.ts';
import { rivetRow } from '../../../src/lib/engine/methods/rivet-row.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { alikeFault } from '../../../src/lib/engine/tasks/chief-slips.ts';

/** 24 spaces of 0.3646 in: to the nearest 1/16 in the maximum pitch, 3/8 in. */
const given = { length: 9.3125, endMargin: 0.28125, greatestPitch: 0.375 };

function faultOf(asked: readonly string[], ...apart: readonly string[][]): string | null {
	const drawn: Draw = { given, story: '', question: '', asked, apart, cautions: [] };
	return alikeFault(rivetRow, drawn, evaluate(rivetRow, given))?.message ?? null;
}

test('two slips that lead to one answer are a fault of a draw that wants them apart', () => {
	expect(faultOf(['pitch'], ['pitchNotDivided', 'byRivets', 'pitchToSixteenths'])).toBe(
		'the slips pitchNotDivided and pitchToSixteenths lead to the same answer: draw other numbers'
	);
	expect(faultOf(['pitch'], ['pitchNotDivided', 'byRivets'])).toBeNull();
	expect(faultOf(['pitch'])).toBeNull();
});

test('another field that is asked tells two slips apart, and slips that do not show are passed over', () => {
	// Both come to one pitch; only without the margins is the count another.
	expect(faultOf(['pitch'], ['noMargin', 'lengthByRivets'])).not.toBeNull();
	expect(faultOf(['count', 'pitch'], ['noMargin', 'lengthByRivets'])).toBeNull();
	expect(faultOf(['run'], ['pitchNotDivided', 'pitchToSixteenths'])).toBeNull();
});

test('a slip that the method has not is told', () => {
	expect(() => faultOf(['pitch'], ['gone'])).toThrow(
		/gone told apart, which is no slip of rivet-row/
	);
});
