import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ExpectedLearner } from '../../../src/lib/engine/schedule/expected-learner.ts';
import {
	type Memory,
	emptyMemory,
	recall,
	remember
} from '../../../src/lib/engine/schedule/memory.ts';
import { someHistory } from './plan-arbitrary.ts';

const kind = { id: 'k', family: 'f', aim: 'a', skills: ['a'] };

test('right answers keep to their expected number, to within a half', () => {
	fc.assert(
		fc.property(someHistory, (history) => {
			const learner = new ExpectedLearner(new Map());
			let [day, expected, right] = [100, 0, 0];
			for (const [gap] of history) {
				day += gap;
				expected += recall(learner.memories.get('a') ?? emptyMemory, day);
				if (learner.answer(kind, day)) right++;
				expect(Math.abs(right - expected)).toBeLessThanOrEqual(0.5 + 1e-9);
			}
		})
	);
});

test('a task is right when each of its steps is, and each step learns from its own answer', () => {
	const sure: Memory = [1, 5, 10].reduce((m, day) => remember(m, 'right', day), emptyMemory);
	const learner = new ExpectedLearner(new Map([['a', sure]]));
	expect(learner.answer(kind, 11)).toBe(true);
	expect(learner.answer({ ...kind, skills: ['a', 'b'] }, 12)).toBe(false);
	expect(learner.memories.get('a')?.missedDay).toBeNull();
	expect(learner.memories.get('b')?.missedDay).toBe(12);
});

test('daily practice wears nothing out', () => {
	const learner = new ExpectedLearner(new Map());
	const shares = Array.from({ length: 60 }, (_, day) => {
		learner.answer(kind, day);
		return recall(learner.memories.get('a') ?? emptyMemory, day + 1);
	});
	expect(shares).toEqual([...shares].sort((a, b) => a - b));
});
