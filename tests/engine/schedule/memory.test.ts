import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	type Memory,
	UNMET_RECALL,
	emptyMemory,
	isMet,
	recall,
	recallLeft,
	remember
} from '../../../src/lib/engine/schedule/memory.ts';
import { memoryAfter, someEvidence, someHistory } from './plan-arbitrary.ts';

const gap = fc.double({ min: 0, max: 60, noNaN: true });

describe('a never-met skill', () => {
	test('has the stated prior on every day', () => {
		expect(isMet(emptyMemory)).toBe(false);
		expect(recall(emptyMemory, 0)).toBe(UNMET_RECALL);
		expect(recall(emptyMemory, 1e5)).toBe(UNMET_RECALL);
	});

	test('starts with the published FSRS-6 stabilities', () => {
		expect(remember(emptyMemory, 'wrong', 3).stability).toBe(0.212);
		expect(remember(emptyMemory, 'helped', 3).stability).toBe(1.2931);
		expect(remember(emptyMemory, 'right', 3).stability).toBe(2.3065);
	});
});

describe('knowledge tracing', () => {
	// by hand from guess 0.2, slip 0.1, taught 0.3 and a start of (0.35 - 0.2) / 0.7
	test.each([
		{ answers: ['right'], grasp: 0.6857 },
		{ answers: ['helped'], grasp: 0.5044 },
		{ answers: ['wrong'], grasp: 0.3231 },
		{ answers: ['wrong', 'right'], grasp: 0.7776 },
		{ answers: ['right', 'wrong'], grasp: 0.45 }
	] as const)('$answers leaves $grasp', ({ answers, grasp }) => {
		const history = answers.map((evidence) => [1, evidence] as const);
		expect(memoryAfter(history, 0).memory.grasp).toBeCloseTo(grasp, 4);
	});
});

test('recall is 90 % of the fresh share after as many days as the stability', () => {
	const memory = remember(emptyMemory, 'right', 10);
	expect(recallLeft(memory, 10 + memory.stability)).toBeCloseTo(0.9, 6);
	expect(recall(memory, 10 + memory.stability)).toBeCloseTo(0.9 * recall(memory, 10), 6);
});

test('recall stays between 0 and 1 and only falls while nothing is answered', () => {
	fc.assert(
		fc.property(someHistory, gap, gap, (history, a, b) => {
			const { memory, at } = memoryAfter(history, 100);
			const [sooner, later] = [recall(memory, at + a), recall(memory, at + a + b)];
			expect(sooner).toBeLessThanOrEqual(1);
			expect(later).toBeGreaterThanOrEqual(0);
			expect(later).toBeLessThanOrEqual(sooner);
		})
	);
});

test('a right answer never lowers recall, then or later', () => {
	fc.assert(
		fc.property(someHistory, gap, gap, (history, wait, ahead) => {
			const { memory, at } = memoryAfter(history, 100);
			const now = at + wait;
			const after = remember(memory, 'right', now);
			expect(recall(after, now)).toBeGreaterThanOrEqual(recall(memory, now));
			if (isMet(memory)) {
				expect(recall(after, now + ahead)).toBeGreaterThanOrEqual(recall(memory, now + ahead));
			}
		})
	);
});

test('right shows more than helped, helped more than wrong', () => {
	fc.assert(
		fc.property(someHistory, gap, gap, (history, wait, ahead) => {
			const { memory, at } = memoryAfter(history, 100);
			const now = at + wait;
			const then = (evidence: 'right' | 'helped' | 'wrong') =>
				recall(remember(memory, evidence, now), now + ahead);
			expect(then('right')).toBeGreaterThanOrEqual(then('helped'));
			expect(then('helped')).toBeGreaterThanOrEqual(then('wrong'));
		})
	);
});

test('the same answers lead to the same memory, in plain finite numbers', () => {
	fc.assert(
		fc.property(someHistory, (history) => {
			const { memory } = memoryAfter(history, 100);
			expect(memoryAfter(history, 100).memory).toEqual(memory);
			expect(JSON.parse(JSON.stringify(memory))).toEqual(memory);
			const { missedDay, ...numbers } = memory;
			expect(Object.values(numbers).every(Number.isFinite)).toBe(true);
			expect(missedDay === null || Number.isInteger(missedDay)).toBe(true);
		})
	);
});

test('evidence that arrives out of order never turns time back', () => {
	fc.assert(
		fc.property(someHistory, someEvidence, gap, (history, evidence, back) => {
			const { memory, at } = memoryAfter([[0, 'right'], ...history], 100);
			expect(remember(memory, evidence, at - back).lastDay).toBe(at);
		})
	);
});

describe('a miss', () => {
	const missed: Memory = remember(remember(emptyMemory, 'right', 10), 'wrong', 14.4);

	test('is kept with its day', () => expect(missed.missedDay).toBe(14));

	test('is not settled by a right answer on the same day', () => {
		expect(remember(missed, 'right', 14.9).missedDay).toBe(14);
	});

	test.each(['right', 'helped'] as const)('is settled by %s on a later day', (evidence) => {
		expect(remember(missed, evidence, 15.1).missedDay).toBeNull();
	});

	test('moves to the day of the next miss', () => {
		expect(remember(missed, 'wrong', 20).missedDay).toBe(20);
	});
});

test('a second look on the same day counts less than one on the next', () => {
	const first = remember(emptyMemory, 'right', 10.2);
	const sameDay = remember(first, 'right', 10.4).stability;
	const nextDay = remember(first, 'right', 11.2).stability;
	expect(sameDay).toBe(remember(first, 'right', 10.2).stability);
	expect(sameDay).toBeGreaterThanOrEqual(first.stability);
	expect(nextDay).toBeGreaterThan(sameDay);
});
