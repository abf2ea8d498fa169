import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	answered,
	handedIn,
	lengthProblem,
	newPaper,
	type Paper,
	readPaper,
	secondsLeft,
	secondsUsed
} from '../../../src/lib/app/rehearsal/rehearsal-paper.ts';

const start = Date.UTC(2026, 10, 25, 9);
const minute = 60_000;
const paper = newPaper({
	id: '3f0c9a4e-7d0b-4b6a-9c1e-2f6a51b0c111',
	questions: Array.from({ length: 30 }, (_, i) => ({
		task: `RL2-000${i}-1A`,
		key: 'length',
		options: [null, ...['a', 'b', 'c'].map((slip) => ({ kind: 'slip' as const, slips: [slip] }))]
	})),
	start,
	length: 3600
});

describe('the time', () => {
	test('goes on by the clock, whatever was kept', () => {
		expect(secondsLeft(paper, start)).toBe(3600);
		expect(secondsLeft(paper, start + 22 * minute)).toBe(38 * 60);
		expect(secondsLeft(paper, start + 60 * minute)).toBe(0);
		expect(secondsLeft(paper, start + 600 * minute)).toBe(0);
	});

	test('is never more than was given, where the clock is set back', () => {
		expect(secondsLeft(paper, start - 600 * minute)).toBe(3600);
	});

	test('ends the paper at the end of the time, however late that is seen', () => {
		expect(handedIn(paper, start + 10 * minute).end).toBe(start + 10 * minute);
		expect(handedIn(paper, start + 999 * minute).end).toBe(start + 60 * minute);
		expect(secondsUsed(handedIn(paper, start + 999 * minute))).toBe(3600);
	});

	test('used is never below zero', () => {
		fc.assert(
			fc.property(fc.integer({ min: -1e9, max: 1e9 }), (after) => {
				const used = secondsUsed(handedIn(paper, start + after));
				expect(used).toBeGreaterThanOrEqual(0);
				expect(used).toBeLessThanOrEqual(3600);
			})
		);
	});
});

describe('a paper that was kept', () => {
	const worked: Paper = {
		...paper,
		at: 4,
		choices: paper.choices.with(2, 3).with(3, 0),
		later: paper.later.with(3, true),
		seconds: paper.seconds.with(2, 41.5)
	};

	test('is read back as it was', () => {
		expect(readPaper(JSON.stringify(worked))).toEqual(worked);
		expect(answered(worked)).toBe(2);
	});

	test.each<[string, string | null]>([
		['nothing', null],
		['no JSON', '{'],
		['something else', '{"id":1}'],
		['a place past the end', JSON.stringify({ ...worked, at: 30 })],
		['too few answers', JSON.stringify({ ...worked, choices: [null] })],
		['too many questions', JSON.stringify({ ...worked, count: 61 })],
		['no questions', JSON.stringify({ ...worked, questions: undefined })],
		['too few questions', JSON.stringify({ ...worked, questions: paper.questions.slice(1) })],
		[
			'an answer past the options',
			JSON.stringify({ ...worked, choices: paper.choices.with(0, 4) })
		],
		['an answer that is no place', JSON.stringify({ ...worked, choices: paper.choices.fill(-1) })]
	])('is not used when it is %s', (_, text) => {
		expect(readPaper(text)).toBeNull();
	});
});

test.each<[number | null, number | null, string | null]>([
	[30, 60, null],
	[10, 5, null],
	[60, 240, null],
	[9, 60, 'Choose from 10 to 60 questions.'],
	[61, 60, 'Choose from 10 to 60 questions.'],
	[null, 60, 'Choose from 10 to 60 questions.'],
	[12.5, 60, 'Choose from 10 to 60 questions.'],
	[30, 4, 'Choose from 5 to 240 minutes.'],
	[30, 241, 'Choose from 5 to 240 minutes.'],
	[30, null, 'Choose from 5 to 240 minutes.']
])('%s questions in %s minutes', (count, minutes, problem) => {
	expect(lengthProblem(count, minutes)).toBe(problem);
});
