import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SHIPPED } from '../../../src/lib/engine/schedule/policy.ts';
import { planRun } from '../../../src/lib/engine/schedule/plan.ts';
import {
	type Reason,
	type Run,
	type RunItem,
	afterMiss,
	runSeconds
} from '../../../src/lib/engine/schedule/run.ts';
import { someInput } from './plan-arbitrary.ts';

const item = (letter: string, numbers: Partial<RunItem> = {}): RunItem => ({
	kind: { id: letter, family: letter, aim: `${letter}/1`, skills: [`${letter}/1`] },
	skill: `${letter}/1`,
	reason: { kind: 'fading', skill: `${letter}/1`, day: 1, recall: 0.5 },
	seconds: 60,
	worked: false,
	reading: 0,
	returned: false,
	...numbers
});
const isNew: Reason = { kind: 'new', skill: 'x' };
const runOf = (letters: string, numbers: Partial<RunItem> = {}): Run => {
	const items = [...letters].map((letter) => item(letter, numbers));
	return { day: 7, items, budget: runSeconds(items) };
};
const lettersOf = (run: Run) => run.items.map((i) => i.kind.id).join('');

describe('after a miss', () => {
	test('the kind returns after two others, and the last task makes room', () => {
		const run = afterMiss(runOf('abcdefghij'), 1);
		expect(lettersOf(run)).toBe('abcdbefghi');
		expect(run.items[4]).toMatchObject({
			returned: true,
			reason: { kind: 'missed', skill: 'b/1', day: 7 }
		});
	});

	test('after three where two would seat it beside its own family', () => {
		const run = runOf('abcdefghij');
		// c is now of family a, so a may not stand before or after it
		const c = { ...item('c'), kind: { ...item('c').kind, family: 'a' } };
		const items = run.items.map((i) => (i.kind.id === 'c' ? c : i));
		expect(lettersOf(afterMiss({ ...run, items }, 0))).toBe('abcdaefghi');
	});

	test('after two beside its own family where three are no better, never beside its own kind', () => {
		const run = runOf('abcdefghij');
		const items = run.items.map((i) => ({ ...i, kind: { ...i.kind, family: 'all' } }));
		expect(lettersOf(afterMiss({ ...run, items }, 0))).toBe('abcadefghi');
		expect(lettersOf(afterMiss(runOf('abacdefghi'), 0))).toBe('abacadefgh');
	});

	test('names the step the slip sits in', () => {
		const run = afterMiss(runOf('abcdefghij'), 0, 'a/3');
		expect(run.items[3]?.reason).toEqual({ kind: 'missed', skill: 'a/3', day: 7 });
	});

	test('room that is left is used before a task is dropped', () => {
		const run = runOf('abcdefghij');
		expect(lettersOf(afterMiss({ ...run, budget: run.budget + 60 }, 0))).toBe('abcadefghij');
	});

	test('reading of the worked task is not repeated', () => {
		const run = afterMiss(runOf('abcdef', { reason: isNew, worked: true, reading: 30 }), 0);
		const back = { returned: true, seconds: 60, worked: false, reading: 0 };
		expect(run.items[3]).toMatchObject(back);
	});

	test.each([
		{ why: 'only one other follows', letters: 'abcdefghij', at: 8 },
		{ why: 'two follow but no time is left', letters: 'abcdefghij', at: 7 },
		{ why: 'there is no such task', letters: 'abcdefghij', at: 10 },
		{ why: 'one in ten is more than the run holds', letters: 'abcdefghi', at: 0 }
	])('the run stays as it is when $why', ({ letters, at }) => {
		const run = runOf(letters);
		expect(afterMiss(run, at)).toBe(run);
	});

	test('returns fill at most their share: one in ten of known, one in four of new skills', () => {
		const missAll = (run: Run) =>
			run.items.reduce((r: Run, _, i) => afterMiss(r, i), run).items.filter((i) => i.returned);
		expect(missAll(runOf('abcdefghijklmnopqrst'))).toHaveLength(2);
		expect(missAll(runOf('abcdefghijklmnopqrst', { reason: isNew }))).toHaveLength(5);
		expect(missAll(runOf('abcdefghijklmnopqrst', { worked: true }))).toHaveLength(5);
	});

	test('an earlier return is not dropped for a new one', () => {
		const run = runOf('abcdefgh', { reason: isNew });
		const items = run.items.map((i) => (i.kind.id === 'h' ? { ...i, returned: true } : i));
		const full = { ...run, items };
		expect(afterMiss(full, 4)).toBe(full);
	});

	test('a return that is missed again waits for another day', () => {
		const run = afterMiss(runOf('abcdefghijklmnopqrst'), 0);
		expect(afterMiss(run, 3)).toBe(run);
	});
});

test('whatever is missed, the run keeps its budget, its done part and its returns', () => {
	const misses = fc.array(fc.nat(30), { maxLength: 12 });
	fc.assert(
		fc.property(someInput, misses, (input, drawn) => {
			let run = planRun(input);
			for (const index of [...new Set(drawn)].sort((a, b) => a - b)) {
				const next = afterMiss(run, index);
				const returns = (r: Run) => r.items.filter((i) => i.returned).length;
				expect(runSeconds(next.items)).toBeLessThanOrEqual(next.budget);
				expect(next.items.slice(0, index + 1)).toEqual(run.items.slice(0, index + 1));
				expect(returns(next)).toBeGreaterThanOrEqual(returns(run));
				expect(returns(next)).toBeLessThanOrEqual(SHIPPED.newReturns * next.items.length + 1);
				if (next !== run) {
					const place = next.items.findIndex((i, at) => i !== run.items[at]);
					expect([2, 3]).toContain(place - index - 1);
					expect(next.items[place]?.kind).toBe(run.items[index]?.kind);
				}
				run = next;
			}
		})
	);
});
