import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Attempt, KnownEvent } from '../../../src/lib/engine/schedule/event.ts';
import { dayOf } from '../../../src/lib/engine/schedule/day.ts';
import {
	emptyLearning,
	freshTasks,
	isRepeat,
	type Learning,
	learningFold,
	pace,
	standing
} from '../../../src/lib/engine/schedule/learning.ts';
import { emptyMemory, remember } from '../../../src/lib/engine/schedule/memory.ts';
import { attempt } from '../../storage/event-arbitrary.ts';

const day = dayOf('2026-03-09');
const accept = { kind: 'accept', carried: false } as const;
const carried = { kind: 'accept', carried: true } as const;
const rework: Attempt['verdicts'][string] = { kind: 'rework', cause: 'unknown', slips: [] };

function learn(events: readonly KnownEvent[], from: Learning = emptyLearning()): Learning {
	return events.reduce((state, event) => learningFold.apply(state, event), from);
}

/** An attempt at task `n`, with numbers of its own. */
function at(n: number, facts: Partial<Attempt> = {}): Attempt {
	return attempt({ task: `task ${n}`, givens: `numbers ${n}`, verdicts: { x: accept }, ...facts });
}

describe('a slip that was told', () => {
	const told = [{ skill: 'piece/grip', slip: 'oneLayer' }];

	test('is noted, though its skill was charged before', () => {
		const first = at(1, { verdicts: { x: rework }, skills: [] });
		const state = learn([first, at(1, { skills: [], told })]);
		expect(state.slips).toEqual({ 'piece/grip': { slip: 'oneLayer', day, times: 1 } });
		expect(state.memories).toEqual({});
	});

	test('counts once where it charges its skill as well', () => {
		const skills = [{ ...told[0], skill: 'piece/grip', result: 'wrong' as const }];
		const state = learn([at(1, { skills, told })]);
		expect(state.slips['piece/grip']?.times).toBe(1);
		expect(state.memories['piece/grip']).toEqual(remember(emptyMemory, 'wrong', day));
	});
});

describe('a day', () => {
	test.each<[string, Partial<Attempt>, keyof Learning['days'][number]]>([
		['right at once', {}, 'right'],
		['with a step opened', { opened: ['grip'] }, 'helped'],
		['step by step', { byStep: true }, 'helped'],
		['one answer of two wrong', { verdicts: { x: accept, y: rework } }, 'wrong'],
		['one carried', { verdicts: { x: accept, y: carried } }, 'wrong'],
		['given up', { verdicts: {}, worked: true }, 'wrong']
	])('counts a task %s', (_how, facts, where) => {
		const none = { right: 0, helped: 0, wrong: 0, seconds: 42.5 };
		expect(learn([at(1, facts)]).days).toEqual({ [day]: { ...none, [where]: 1 } });
	});

	test('counts a task once, as its first check stood, with the seconds of all', () => {
		const first = at(1, { verdicts: { x: rework }, seconds: 30 });
		const state = learn([first, at(1, { seconds: 12 })]);
		expect(state.days[day]).toEqual({ right: 0, helped: 0, wrong: 1, seconds: 42 });
		expect(state).toMatchObject({ tasks: 1, seconds: 42, givens: ['numbers 1'] });
	});

	test('counts it once, also when another was answered in between', () => {
		const state = learn([at(1, { verdicts: { x: rework } }), at(2), at(1)]);
		expect(state.days[day]).toMatchObject({ right: 1, wrong: 1 });
		expect(state.givens).toEqual(['numbers 1', 'numbers 2']);
	});

	test('counts two tasks that came to the same numbers as two', () => {
		expect(learn([at(1), at(2, { givens: 'numbers 1' })]).days[day]).toMatchObject({ right: 2 });
	});

	test('goes by the date where the learner was, not by the time of the clock', () => {
		const state = learn([at(1, { day: '2026-03-10' }), at(2, { day: '2026-03-09' })]);
		expect(Object.keys(state.days).map(Number)).toEqual([day, day + 1]);
	});
});

describe('the newest tasks', () => {
	const many = Array.from({ length: 70 }, (_, n) => at(n));

	test('are fifty, newest last', () => {
		const { givens, newest } = learn(many);
		expect(freshTasks).toBe(50);
		expect(givens).toEqual(many.slice(20).map((event) => event.givens));
		expect(newest).toEqual(many.slice(20).map((event) => event.task));
	});

	test('tell a further try from a new task', () => {
		const state = learn(many);
		expect(isRepeat(state, at(20))).toBe(true);
		expect(isRepeat(state, at(19))).toBe(false);
	});
});

describe('the memory of a skill', () => {
	test('takes every piece of evidence in order', () => {
		const skill = 'rivet-length/shank';
		const skills = (result: 'right' | 'helped' | 'wrong') => ({ skills: [{ skill, result }] });
		const state = learn([
			at(1, skills('wrong')),
			at(1, skills('helped')),
			at(2, { ...skills('right'), day: '2026-03-12' })
		]);
		const missed = remember(remember(emptyMemory, 'wrong', day), 'helped', day);
		expect(state.memories).toEqual({ [skill]: remember(missed, 'right', day + 3) });
	});

	test('keeps its newest slip, and how often that one came in a row', () => {
		const slipped = (n: number, slip: string) =>
			at(n, { skills: [{ skill: 'a/b', result: 'wrong', slip }] });
		const events = [slipped(1, 'one'), slipped(2, 'two'), slipped(3, 'two')];
		expect(learn(events).slips).toEqual({ 'a/b': { slip: 'two', day, times: 2 } });
	});
});

test('settings and namings change nothing', () => {
	const stamp = { id: at(1).id, v: 1, learner: at(1).learner, at: 1, day: '2026-03-09' } as const;
	const state = learn([
		{ ...stamp, type: 'setting', key: 'course', value: null },
		{ ...stamp, type: 'learner', nickname: 'Sam' }
	]);
	expect(state).toEqual(emptyLearning());
});

test('the state comes through storage as it was', () => {
	const state = learn([at(1), at(2, { verdicts: { x: rework } })]);
	expect(JSON.parse(JSON.stringify(state))).toEqual(state);
	expect(learn([at(3)], structuredClone(state))).toEqual(learn([at(3)], state));
});

describe('the pace', () => {
	const paceOf = (tasks: number, seconds: number) => pace({ ...emptyLearning(), tasks, seconds });

	test('is two minutes before anything was done, and nears the mean', () => {
		expect(paceOf(0, 0)).toBe(120);
		expect(paceOf(5, 5 * 60)).toBe(90);
		expect(paceOf(10_000, 10_000 * 60)).toBeCloseTo(60, 1);
	});

	test('is never below half a minute nor above ten', () => {
		fc.assert(
			fc.property(fc.nat(1000), fc.nat(1_000_000), (tasks, seconds) => {
				const found = paceOf(tasks, seconds);
				expect(found).toBeGreaterThanOrEqual(30);
				expect(found).toBeLessThanOrEqual(600);
			})
		);
	});
});

test('how a check stands does not hang on the skills it showed', () => {
	expect(standing(at(1, { skills: [] }))).toBe('right');
	expect(standing(at(1, { verdicts: { x: rework }, skills: [] }))).toBe('wrong');
});
