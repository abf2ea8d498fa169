import { expect, test } from 'vitest';
import { rivetLength } from '../../../src/lib/engine/methods/rivet-length.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';

const stack = { layers: [0.032, 0.04], D: 0.125 };

test('a method is worked step by step', () => {
	const values = evaluate(rivetLength, stack);
	expect(values.grip).toBeCloseTo(0.072, 12);
	expect(values.shank).toBe(0.1875);
	expect(values.needed).toBeCloseTo(0.2595, 12);
	expect(values.length).toBe(5 / 16);
});

test('a slip replaces one formula and carries on', () => {
	const values = evaluate(rivetLength, stack, { slips: { needed: 'noShank' } });
	expect(values.needed).toBe(values.grip);
	expect(values.length).toBe(2 / 16);
});

test('a value put in at a step carries on', () => {
	expect(evaluate(rivetLength, stack, { values: { grip: 0.1 } }).length).toBe(5 / 16);
});

test('a slip of another step is refused', () => {
	expect(() => evaluate(rivetLength, stack, { slips: { needed: 'nothing' } })).toThrow(
		'unknown slip'
	);
});
