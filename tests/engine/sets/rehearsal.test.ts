import { ok } from 'node:assert/strict';
import { kindAt } from '../../../src/lib/engine/solver/kind-at.ts';
import { describe, expect, test } from 'vitest';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { randomFrom } from '../../../src/lib/engine/families/random.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { type Level, levels } from '../../../src/lib/engine/families/level.ts';
import { differs, toleranceAt } from '../../../src/lib/engine/solver/tolerance.ts';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import { exactly } from '../../../src/lib/engine/quantity/exact.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { givensOf, numbersIn } from '../../../src/lib/engine/tasks/givens.ts';
import {
	composeRehearsal,
	optionTexts,
	type Question,
	questionOn,
	questionText
} from '../../../src/lib/engine/sets/rehearsal.ts';

const families = await loadFamilies();
const seeds = Array.from({ length: 40 }, (_, i) => `seed ${i}`);
const rehearsals = seeds.map((seed) => composeRehearsal(seed, families, 30));
const longest = seeds.map((seed) => composeRehearsal(seed, families, 60));
const composed = new Map([
	[30, rehearsals],
	[60, longest]
]);

/** Questions of one kind from many draws. */
function questionsOf(code: string, level: Level, count = 150): Question[] {
	const family = families.find((one) => one.code === code);
	if (!family) throw new Error(code);
	return Array.from({ length: count }, (_, i) =>
		questionOn(drawTask(family, level, i * 6571), randomFrom(`options ${i}`))
	).filter((question) => question !== null);
}

describe.each(families.map(({ code, id }) => [id, code] as const))('%s', (_, code) => {
	const byLevel = levels.map((level) => questionsOf(code, level));
	const questions = byLevel.flat();

	test('nearly every draw gives a question, at every level', () => {
		for (const level of levels) {
			expect(byLevel[level - 1]?.length, String(level)).toBeGreaterThan(120);
		}
	});

	test('four options, or all the words there are', () => {
		for (const { task, key, options } of questions) {
			const words = kindAt(task.method, key).choices.length;
			expect(options.length).toBe(words > 0 ? Math.min(4, words) : 4);
		}
	});

	test('options look different in inches and in millimetres', () => {
		for (const question of questions) {
			for (const units of ['in', 'mm'] as const) {
				const texts = optionTexts(question, units);
				ok(new Set(texts).size === texts.length, `${question.task.number}: ${texts.join(' | ')}`);
			}
		}
	});

	test('one option is right, and no other is within its tolerance', () => {
		for (const { task, key, options, right } of questions) {
			const { method } = task;
			expect(options[right]?.value).toEqual(task.right[key]);
			for (const [place, { value, cause }] of options.entries()) {
				ok((cause === null) === (place === right), task.number);
				if (place === right) continue;
				const entry = { value: typeof value === 'number' ? exactly(value) : String(value) };
				const verdict = mark(task, { [key]: { ...entry, grain: 0 } })[key];
				ok(verdict?.kind === 'rework', `${task.number} ${String(value)}`);
				if (typeof value !== 'number') continue;
				const apart = exactly(value)
					.sub(exactly(Number(task.right[key])))
					.abs();
				const close = apart.compare(toleranceAt(method, key)) <= 0;
				ok(!close, `${task.number} ${value}`);
			}
		}
	});

	test('every wrong option is what its slips lead to', () => {
		for (const { task, key, options } of questions) {
			const { method } = task;
			const made = (ids: readonly string[]) => {
				const slips = Object.fromEntries(ids.map((id) => [method.slips[id]?.step ?? '', id]));
				return evaluate(method, task.drawn.given, { slips })[key];
			};
			for (const { value, cause } of options) {
				if (!cause) continue;
				const leads = cause.kind === 'slip' ? [cause.slips] : cause.slips.map((id) => [id]);
				for (const ids of leads) {
					const led = { [key]: made(ids) ?? '' };
					const where = `${task.number} ${String(value)} by ${ids.join()}`;
					ok(!differs(method, key, led, { [key]: value }), where);
				}
			}
		}
	});

	test('numbers go from small to large', () => {
		for (const { options } of questions) {
			const numbers = options.map(({ value }) => value).filter((one) => typeof one === 'number');
			expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
		}
	});
});

describe('a rehearsal', () => {
	test('the same seed and families give the same questions', () => {
		for (const [i, seed] of seeds.entries()) {
			const again = composeRehearsal(seed, families, 30);
			expect(again).toEqual(rehearsals[i]);
		}
		const numbers = rehearsals.map((one) => one.map(({ task }) => task.number).join());
		expect(new Set(numbers).size).toBe(seeds.length);
	});

	const often = [
		...new Set(cards.filter(({ every = 1 }) => every === 1).map((card) => card.topic))
	];

	test.each([10, 30, 33, 60])('%i questions: topics even, neighbours unlike', (count) => {
		for (const [i, seed] of seeds.entries()) {
			const questions = composed.get(count)?.[i] ?? composeRehearsal(seed, families, count);
			const topics = questions.map(({ task }) => task.family.topic);
			const counts = often.map((topic) => topics.filter((one) => one === topic).length);
			expect(topics.length).toBe(count);
			expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
			// A long one comes in the first of every three rounds.
			const long = topics.filter((topic) => !often.includes(topic)).length;
			expect(Math.abs(long - count / (3 * often.length + 1))).toBeLessThan(1.5);
			expect(topics.some((topic, i) => topic === topics[i - 1])).toBe(false);
		}
	});

	test('every family of a topic comes before one comes again', () => {
		for (const questions of rehearsals) {
			for (const { topic } of families) {
				const codes = questions
					.map(({ task }) => task.family)
					.filter((family) => family.topic === topic)
					.map(({ code }) => code);
				const all = families.filter((family) => family.topic === topic).length;
				expect(new Set(codes.slice(0, all)).size).toBe(Math.min(all, codes.length));
			}
		}
	});

	test('no numbers come twice, in the longest one either', () => {
		for (const questions of longest) {
			const numbers = questions.map(({ task }) => numbersIn(givensOf(task)));
			expect(new Set(numbers).size).toBe(60);
		}
	});

	test('only the levels asked for are drawn', () => {
		for (const seed of seeds.slice(0, 5)) {
			const questions = composeRehearsal(seed, families, 30, [1, 2]);
			expect([...new Set(questions.map(({ task }) => task.id.level))].sort()).toEqual([1, 2]);
		}
	});

	test('the right option is no more often in one place than the slips force', () => {
		const places = rehearsals.flat().flatMap(({ right, options }) => {
			return options.length === 4 ? [right] : [];
		});
		for (const place of [0, 1, 2, 3]) {
			const share = places.filter((one) => one === place).length / places.length;
			expect(share, `place ${place}`).toBeGreaterThan(0.12);
			expect(share, `place ${place}`).toBeLessThan(0.38);
		}
	});

	test('a rivet number cannot be told as the one most like the others', () => {
		for (const { options, right } of questionsOf('RN', 2)) {
			const alike = (i: number) =>
				options.filter(({ value }, j) => j !== i && shares(options[i]?.value, value)).length;
			expect(options.some((_, i) => i !== right && alike(i) >= alike(right))).toBe(true);
		}
	});

	test('a question asks for one value, and a label’s explanation is left out', () => {
		for (const question of rehearsals.flat()) {
			const { task, key } = question;
			const text = questionText(question);
			expect(task.drawn.asked).toContain(key);
			if (task.drawn.asked.length === 1) expect(text).toBe(task.drawn.question);
			else expect(text).toMatch(/^Wanted: [^:]+$/);
		}
	});

	test('an empty seed is refused', () => {
		expect(() => composeRehearsal('', families, 10)).toThrow('empty seed');
	});
});

/** Whether two rivet numbers are alike up to the dash or after it. */
function shares(one: unknown, other: unknown): boolean {
	const [first, second] = [String(one).split('-'), String(other).split('-')];
	return first[0] === second[0] || first[1] === second[1];
}
