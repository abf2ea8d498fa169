import type { Family } from '../../../src/lib/engine/families/family.ts';
import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { topicIds } from '../../../src/lib/engine/families/topics.ts';
import { randomFrom } from '../../../src/lib/engine/families/random.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { readEvent } from '../../../src/lib/engine/schedule/event.ts';
import { noteVerdicts } from '../../../src/lib/engine/schedule/note-verdicts.ts';
import type { Option } from '../../../src/lib/engine/sets/options.ts';
import {
	type Choice,
	evidenceIn,
	markOf,
	resultOf,
	verdictOn
} from '../../../src/lib/engine/sets/rehearsal-marks.ts';
import {
	composeRehearsal,
	type Question,
	questionOn
} from '../../../src/lib/engine/sets/rehearsal.ts';

const families = await loadFamilies();
const questions = ['a', 'b', 'c', 'd'].flatMap((seed) => composeRehearsal(seed, families, 60));

function wrongPlaces({ options }: Question): number[] {
	return options.flatMap(({ cause }, place) => (cause ? [place] : []));
}

describe('the verdict', () => {
	test('right is accepted, wrong names its slips', () => {
		for (const question of questions) {
			expect(verdictOn(question, question.right)).toEqual({ kind: 'accept', carried: false });
			for (const place of wrongPlaces(question)) {
				const { cause } = question.options[place] ?? {};
				expect(cause?.slips.length).toBeGreaterThan(0);
				expect(verdictOn(question, place)).toEqual({ kind: 'rework', cause });
			}
		}
	});

	test('a place without an option is refused', () => {
		expect(() => verdictOn(questions[0] as Question, 7)).toThrow('no such option: 7');
	});

	test('it can be kept in the log', () => {
		for (const question of questions) {
			for (const place of question.options.keys()) {
				const event = {
					id: '3f0c9a4e-7d0b-4b6a-9c1e-000000000000',
					v: 1,
					learner: '3f0c9a4e-7d0b-4b6a-9c1e-000000000001',
					at: 0,
					day: '2026-12-01',
					type: 'attempt',
					task: question.task.number,
					runId: 'r',
					source: 'rehearsal',
					typed: { [question.key]: 'x' },
					verdicts: noteVerdicts({ [question.key]: verdictOn(question, place) }),
					opened: [],
					byStep: false,
					worked: false,
					seconds: 60,
					skills: evidenceIn(question, place),
					givens: 'g'
				};
				expect(readEvent(event).ok).toBe(true);
			}
		}
	});
});

describe('the evidence', () => {
	test('no answer shows nothing', () => {
		for (const question of questions) expect(evidenceIn(question, null)).toEqual([]);
	});

	test('a right choice speaks for the step and all that lead to it', () => {
		for (const question of questions) {
			const shown = evidenceIn(question, question.right);
			expect(shown.every(({ result, slip }) => result === 'right' && !slip)).toBe(true);
			const { method } = question.task;
			expect(shown.map(({ skill }) => skill)).toContain(method.steps[question.key]?.skill);
		}
	});

	test('one slip charges its own step, with its name, and credits the others', () => {
		for (const question of questions) {
			const { method } = question.task;
			for (const place of wrongPlaces(question)) {
				const cause = question.options[place]?.cause;
				const wrong = evidenceIn(question, place).filter(({ result }) => result === 'wrong');
				if (cause?.kind === 'slip') {
					const charged = wrong.map(({ skill, slip }) => `${skill} ${slip}`).sort();
					const expected = cause.slips.map((id) => {
						const slip = method.slips[id];
						return `${method.steps[slip?.step ?? '']?.skill} ${slip?.id}`;
					});
					expect(charged).toEqual(expected.sort());
				} else {
					expect(wrong).toEqual([{ skill: method.steps[question.key]?.skill, result: 'wrong' }]);
				}
			}
		}
	});

	test('no shank added, worked by hand', async () => {
		const family = families.find(({ code }) => code === 'RL') as Family;
		const isBare = ({ cause }: Option) => cause?.kind === 'slip' && cause.slips[0] === 'noShank';
		const question = Array.from({ length: 60 }, (_, seed) =>
			questionOn(drawTask(family, 1, seed), randomFrom(`bare ${seed}`))
		).find((one) => one?.options.some(isBare)) as Question;
		expect(evidenceIn(question, question.options.findIndex(isBare))).toEqual([
			{ skill: 'piece/grip', result: 'right' },
			{ skill: 'piece/shank', result: 'right' },
			{ skill: 'rivet-length/needed', result: 'wrong', slip: 'noShank' },
			{ skill: 'piece/stocked-length', result: 'right' }
		]);
	});
});

describe('the result', () => {
	const asked = composeRehearsal('result', families, 30);

	test('right, wrong and open are told apart', () => {
		const [question] = asked as [Question];
		expect(markOf(question, null)).toBe('open');
		expect(markOf(question, question.right)).toBe('right');
		expect(markOf(question, (question.right + 1) % question.options.length)).toBe('wrong');
	});

	test('the topics add up to the whole', () => {
		const choices = asked.map(({ right, options }, i): Choice => {
			if (i % 5 === 0) return null;
			return i % 3 === 0 ? (right + 1) % options.length : right;
		});
		const { all, topics, marks } = resultOf(asked, choices);
		expect(all.of).toBe(30);
		expect(all.right).toBe(marks.filter((mark) => mark === 'right').length);
		// Of 0…29: those that neither 3 nor 5 divides.
		expect(all.right).toBe(16);
		expect(topics.map(({ topic }) => topic)).toEqual(topicIds);
		expect(topics.reduce((sum, { right }) => sum + right, 0)).toBe(all.right);
		const counts = topics.map(({ of }) => of);
		expect(counts.reduce((sum, of) => sum + of, 0)).toBe(all.of);
	});

	test('answers that are missing count as open', () => {
		expect(resultOf(asked, []).marks.every((mark) => mark === 'open')).toBe(true);
	});
});
