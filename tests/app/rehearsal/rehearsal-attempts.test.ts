import { describe, expect, test } from 'vitest';
import { attemptsOf } from '../../../src/lib/app/rehearsal/rehearsal-attempts.ts';
import { newPaper, type Paper } from '../../../src/lib/app/rehearsal/rehearsal-paper.ts';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { readEvent } from '../../../src/lib/engine/schedule/event.ts';
import { emptyLearning, learningFold, pace } from '../../../src/lib/engine/schedule/learning.ts';
import { kept } from '../../../src/lib/engine/sets/kept-question.ts';
import { composeRehearsal } from '../../../src/lib/engine/sets/rehearsal.ts';
import { stamped } from '../../../src/lib/storage/stamp.ts';

const id = '3f0c9a4e-7d0b-4b6a-9c1e-2f6a51b0c111';
const learner = '3f0c9a4e-7d0b-4b6a-9c1e-2f6a51b0c222';
const questions = composeRehearsal(id, await loadFamilies(), 30);
const start = Date.UTC(2026, 10, 25, 9);
const end = start + 1_800_000;

/** Right, wrong, and at the end ten questions that nobody came to. */
const paper: Paper = {
	...newPaper({ id, questions: questions.map(kept), start, length: 3600 }),
	choices: questions.map(({ right, options }, i) => {
		if (i >= 20) return null;
		return i % 2 === 0 ? right : (right + 1) % options.length;
	}),
	seconds: questions.map((_, i) => (i >= 20 ? 0 : i === 3 ? 4000 : 80)),
	end
};
const attempts = attemptsOf(paper, questions, 'in');
const events = attempts.map(({ id: own, at, facts }) => ({
	...stamped(learner, { type: 'attempt', ...facts }, new Date(at)),
	id: own
}));

describe('the attempts of a rehearsal', () => {
	test('are one for every question, with ids and times of their own', () => {
		expect(attempts.length).toBe(30);
		expect(new Set(attempts.map(({ id: own }) => own)).size).toBe(30);
		expect(attempts.map(({ at }) => at)).toEqual(attempts.map((_, i) => end + i));
	});

	test('are the same whenever they are made, so that the log takes them once', () => {
		expect(attemptsOf(paper, questions, 'in')).toEqual(attempts);
	});

	test('of another rehearsal have other ids', () => {
		const other = { ...paper, id: '7b1de5c2-40aa-4f6e-8f43-9d0c2f1e7333' };
		const ids = new Set(attempts.map(({ id: own }) => own));
		expect(attemptsOf(other, questions, 'in').some(({ id: own }) => ids.has(own))).toBe(false);
	});

	test('can be read as events of the log', () => {
		for (const event of events) expect(readEvent(event)).toMatchObject({ ok: true });
	});

	test('hold the option as it was read, in the units it was read in', () => {
		const [first] = questions;
		const typed = attempts[0]?.facts.typed;
		expect(Object.keys(typed ?? {})).toEqual([first?.key]);
		const lengths = attemptsOf(paper, questions, 'mm').flatMap(({ facts }) =>
			Object.values(facts.typed).filter((text) => text.endsWith(' mm'))
		);
		expect(lengths.length).toBeGreaterThan(0);
	});

	test('of a miss name the slip; of no answer show nothing', () => {
		for (const [i, { facts }] of attempts.entries()) {
			const verdicts = Object.values(facts.verdicts);
			if (i >= 20) expect([facts.typed, verdicts, facts.skills]).toEqual([{}, [], []]);
			else if (i % 2 === 0) expect(verdicts).toEqual([{ kind: 'accept', carried: false }]);
			else {
				const [verdict] = verdicts;
				expect(verdict?.kind === 'rework' && verdict.slips.length).toBeGreaterThan(0);
				expect(facts.skills.some(({ result }) => result === 'wrong')).toBe(true);
			}
		}
	});

	test('count a page left open as ten minutes at most', () => {
		expect(attempts[3]?.facts.seconds).toBe(600);
		expect(attempts[4]?.facts.seconds).toBe(80);
	});
});

describe('what the plan makes of them', () => {
	const state = events.reduce((from, event) => learningFold.apply(from, event), emptyLearning());

	test('the skills that were missed are to be practised again', () => {
		const missed = attempts.flatMap(({ facts }) =>
			facts.skills.filter(({ result }) => result === 'wrong').map(({ skill }) => skill)
		);
		expect(missed.length).toBeGreaterThanOrEqual(10);
		for (const skill of missed) {
			expect(state.memories[skill], skill).toBeDefined();
		}
		expect(Object.keys(state.slips).length).toBeGreaterThan(0);
	});

	test('questions that nobody came to do not speed up the pace', () => {
		expect(state.tasks).toBe(20);
		// Nineteen at 80 s and one of 600 s, with the five of 120 s that a new learner begins with.
		expect(pace(state)).toBeCloseTo((19 * 80 + 600 + 5 * 120) / 25, 6);
	});

	test('the numbers are not to come again soon', () => {
		expect(state.givens.length).toBe(30);
	});
});
