import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isOff, portionOn } from '../../../src/lib/engine/schedule/calendar.ts';
import {
	type Memory,
	emptyMemory,
	isMet,
	recall,
	recallLeft,
	remember
} from '../../../src/lib/engine/schedule/memory.ts';
import { SHIPPED } from '../../../src/lib/engine/schedule/policy.ts';
import { type PlanInput, planRun } from '../../../src/lib/engine/schedule/plan.ts';
import { type Run, runSeconds } from '../../../src/lib/engine/schedule/run.ts';
import type { Skill, TaskKind } from '../../../src/lib/engine/schedule/skill.ts';
import { monday, someInput } from './plan-arbitrary.ts';

const skill = (id: string, needs: string[] = [], topic = 'rivets'): Skill => ({ id, topic, needs });
const kind = (id: string, skills: string[], family = id): TaskKind => ({
	id,
	family,
	aim: skills.at(-1) ?? '',
	skills
});
const five = ['a', 'b', 'c', 'd', 'e'];

const input = (numbers: Partial<PlanInput> = {}): PlanInput => ({
	syllabus: { skills: five.map((id) => skill(id)), kinds: five.map((id) => kind(`k${id}`, [id])) },
	memories: new Map(),
	course: { start: monday, exam: monday + 42, minutes: 5, off: { weekdays: [], dates: [] } },
	pace: { task: 60, worked: 0 },
	day: monday,
	...numbers
});
const rightOn = (...days: number[]): Memory =>
	days.reduce((memory, day) => remember(memory, 'right', day), emptyMemory);
const aims = (run: Run) => run.items.map((i) => i.skill).join('');

describe('before the exam', () => {
	const longRested = new Map(five.map((id, i) => [id, rightOn(monday - 20 + i)]));

	test('what has rested longest comes first', () => {
		expect(aims(planRun(input({ memories: longRested })))).toMatch(/^abcd/);
	});

	test('a skill missed of late comes before one that was right a day earlier', () => {
		const missed = remember(rightOn(monday - 30), 'wrong', monday - 4);
		const right = remember(rightOn(monday - 30), 'right', monday - 5);
		const memories = new Map([
			['a', right],
			['b', missed]
		]);
		const run = planRun(input({ memories }));
		expect(aims(run).indexOf('b')).toBeLessThan(aims(run).indexOf('a'));
		expect(run.items.find((i) => i.skill === 'b')?.reason).toEqual({
			kind: 'missed',
			skill: 'b',
			day: monday - 4
		});
	});

	test('new skills wait for those that rested long, and come before those seen yesterday', () => {
		const memories = new Map([
			['a', rightOn(monday - 1)],
			['e', rightOn(monday - 25)]
		]);
		expect(aims(planRun(input({ memories })))).toMatch(/^ebcda?/);
	});

	test('what was missed comes before new skills two days later, until it is right on another day', () => {
		const missed = remember(emptyMemory, 'wrong', monday - 2);
		const first = (memory: Memory) =>
			planRun(input({ memories: new Map([['e', memory]]) })).items[0]?.skill;
		expect(first(missed)).toBe('e');
		expect(first(remember(missed, 'right', monday - 2))).toBe('e');
		expect(first(remember(missed, 'right', monday - 1))).toBe('a');
		expect(first(remember(emptyMemory, 'wrong', monday - 1))).toBe('a');
	});

	test('a first meeting is shown worked and takes the time of reading', () => {
		const run = planRun(input({ pace: { task: 60, worked: 90 } }));
		expect(run.items[0]).toMatchObject({
			worked: true,
			reading: 90,
			reason: { kind: 'new', skill: 'a' }
		});
		expect(run.items).toHaveLength(2); // 150 seconds each of 300
	});

	test('nothing is built on a skill that was just missed while other work is left', () => {
		const skills = [skill('a'), skill('b', ['a']), skill('c'), skill('d'), skill('e')];
		const memories = new Map([
			['a', remember(emptyMemory, 'wrong', monday - 1)],
			['c', rightOn(monday - 2)]
		]);
		const syllabus = { skills, kinds: input().syllabus.kinds };
		expect(aims(planRun(input({ syllabus, memories })))).toMatch(/b$/);
		const settled = new Map([...memories, ['a', rightOn(monday - 9, monday - 1)] as const]);
		expect(aims(planRun(input({ syllabus, memories: settled })))).toMatch(/^b/);
	});

	test('a skill recurs in a run only after two other tasks, and each gets a turn first', () => {
		const run = planRun(input({ course: { ...input().course, minutes: 12 } }));
		const order = aims(run);
		expect(order.length).toBeGreaterThan(8);
		expect(new Set(order.slice(0, 5)).size).toBe(5);
		expect(new Set(order.slice(5, 10)).size).toBe(5);
		expect(order).not.toMatch(/(.).?\1/);
		expect(run.items[5]).toMatchObject({ reason: { kind: 'new' }, worked: false });
	});

	test('a skill exercised on the way counts as practised just now', () => {
		const kinds = [kind('ka', ['a']), kind('kb', ['b']), kind('kc', ['c']), kind('kd', ['a', 'd'])];
		const syllabus = { skills: five.slice(0, 4).map((id) => skill(id)), kinds };
		const memories = new Map(['a', 'b', 'c', 'd'].map((id, i) => [id, rightOn(monday - 20 + i)]));
		expect(aims(planRun(input({ syllabus, memories })))).toBe('abcdb');
	});

	test('a miss is told as one, also where a new step of the task is shown worked first', () => {
		const kinds = [kind('ka', ['b', 'a']), kind('kc', ['c'])];
		const syllabus = { skills: ['a', 'b', 'c'].map((id) => skill(id)), kinds };
		const memories = new Map([
			['a', remember(emptyMemory, 'wrong', monday - 9)],
			['c', rightOn(monday - 1)]
		]);
		expect(planRun(input({ syllabus, memories })).items[0]).toMatchObject({
			reason: { kind: 'missed', skill: 'a', day: monday - 9 },
			worked: true
		});
	});

	test('the last seen is told with its day and what is left of it', () => {
		const memory = rightOn(monday - 12.5);
		const [first] = planRun(input({ memories: new Map([['a', memory]]) })).items;
		const reason = { kind: 'fading', skill: 'a', day: monday - 13, recall: recall(memory, monday) };
		expect(first?.reason).toEqual(reason);
	});

	test('what a skill needs is met first, and without that the skill is not met at all', () => {
		const skills = [skill('b', ['a']), skill('a')];
		const kinds = [kind('kb', ['b']), kind('ka', ['a'])];
		expect(aims(planRun(input({ syllabus: { skills, kinds } })))).toMatch(/^ab/);
		const run = planRun(input({ syllabus: { skills, kinds: kinds.slice(0, 1) } }));
		expect(run.items).toEqual([]);
	});

	test('a step may rest on another of the same task', () => {
		const skills = [skill('a'), skill('b', ['a'])];
		const syllabus = { skills, kinds: [kind('k', ['a', 'b'])] };
		expect(planRun(input({ syllabus })).items[0]?.reason).toMatchObject({
			kind: 'new',
			skill: 'a'
		});
	});

	test('the only kind there is does not follow itself', () => {
		const syllabus = { skills: [skill('a')], kinds: [kind('k', ['a'])] };
		expect(aims(planRun(input({ syllabus })))).toBe('a');
	});

	test('harder kinds follow as grasp grows', () => {
		const kinds = ['k1', 'k2', 'k3'].map((id) => kind(id, ['a'], 'k'));
		const syllabus = { skills: [skill('a')], kinds };
		const level = (memory: Memory | undefined) =>
			planRun(input({ syllabus, memories: new Map(memory ? [['a', memory]] : []) })).items[0]?.kind
				.id;
		expect(level(undefined)).toBe('k1');
		expect(level(rightOn(monday - 10))).toBe('k2');
		expect(level(rightOn(monday - 20, monday - 15, monday - 10))).toBe('k3');
	});
});

describe('with few days', () => {
	const topics = ['rivets', 'bends', 'layout'];
	const skills = topics.flatMap((topic) =>
		[0, 1, 2, 3].map((n) => skill(`${topic}/${n}`, n === 0 ? [] : [`${topic}/${n - 1}`], topic))
	);
	const kinds = skills.map(({ id, topic }) => kind(`k-${id}`, [id], topic));
	const short = (numbers: Partial<PlanInput> = {}) =>
		input({
			syllabus: { skills, kinds },
			course: { ...input().course, exam: monday + 2, minutes: 3 },
			...numbers
		});
	const begun = (run: Run) => run.items.map((item) => item.skill.split('/')[0]);

	test('every topic is begun before any goes further', () => {
		expect(begun(planRun(short()))).toEqual(topics);
		const policy = { ...SHIPPED, firstSteps: 0 };
		expect(new Set(begun(planRun(short({ policy })))).size).toBeLessThan(4);
	});

	test('a topic not begun goes ahead of what was missed, and of the last look', () => {
		const memories = new Map([
			['rivets/0', remember(emptyMemory, 'wrong', monday - 3)],
			['bends/0', rightOn(monday - 3)]
		]);
		expect(planRun(short({ memories })).items[0]?.skill).toBe('layout/0');
		const sweep = { ...input().course, minutes: 3 };
		const [first] = planRun(short({ memories, course: sweep, day: monday + 41 })).items;
		expect(first?.skill).toBe('layout/0');
	});

	test('after that, new steps come from the topic that has come least far', () => {
		const memories = new Map(
			['rivets/0', 'bends/0', 'bends/1', 'layout/0', 'layout/1'].map((id) => [
				id,
				rightOn(monday - 1, monday)
			])
		);
		expect(planRun(short({ memories })).items[0]?.skill).toBe('rivets/1');
	});

	test('a topic left out is not begun', () => {
		const course = { ...short().course, without: ['rivets'] };
		expect(begun(planRun(short({ course })))).not.toContain('rivets');
	});
});

describe('the final sweep', () => {
	const day = monday + 41;

	test('goes over what is there before it starts anything new, and says so', () => {
		const memories = new Map(['a', 'b', 'c'].map((id) => [id, rightOn(day - 2)]));
		const run = planRun(input({ memories, day }));
		expect(aims(run).slice(0, 3).split('').sort().join('')).toBe('abc');
		expect(run.items[0]?.reason).toEqual({ kind: 'sweep', skill: 'a', exam: monday + 42 });
	});

	test('is twice as long as the minutes a day', () => {
		expect(planRun(input({ day })).budget).toBe(600);
	});
});

describe('without an exam ahead', () => {
	const course = { ...input().course, exam: null };

	test('only what is due or new is practised, once', () => {
		fc.assert(
			fc.property(someInput, (drawn) => {
				const day = drawn.day + 60;
				const free = { ...drawn, day, course: { ...drawn.course, exam: null } };
				const seen = new Set<string>();
				for (const { skill: aimed } of planRun(free).items) {
					const memory = free.memories.get(aimed) ?? emptyMemory;
					expect(seen.has(aimed)).toBe(false);
					if (isMet(memory)) expect(recallLeft(memory, day)).toBeLessThan(0.9);
					seen.add(aimed);
				}
			})
		);
	});

	test('a run is empty when all was right today', () => {
		const memories = new Map(five.map((id) => [id, rightOn(monday)]));
		expect(planRun(input({ course, memories })).items).toEqual([]);
	});

	test('a skill is due once a tenth of it is forgotten', () => {
		const memory = rightOn(monday - 2); // stability 2.3 days
		const met = new Map(five.map((id) => [id, memory]));
		expect(planRun(input({ course, memories: met })).items).toEqual([]);
		expect(planRun(input({ course, memories: met, day: monday + 1 })).items).toHaveLength(5);
	});

	test('what is due comes before what is new', () => {
		const memories = new Map([['e', rightOn(monday - 20)]]);
		const [first] = planRun(input({ course, memories })).items;
		expect(first).toMatchObject({ skill: 'e', reason: { kind: 'fading', day: monday - 20 } });
	});
});

describe('free choice', () => {
	const chosen = new Set(['d', 'e']);

	test('aims only at what was chosen, also on a day off, for the minutes a day', () => {
		const off = { weekdays: [1], dates: [] };
		const run = planRun(input({ chosen, course: { ...input().course, off } }));
		expect(runSeconds(run.items)).toBe(300);
		expect(new Set(run.items.map((i) => i.skill))).toEqual(chosen);
	});

	test('does not ask for needs outside it', () => {
		const skills = [skill('a'), skill('d', ['a'])];
		const kinds = [kind('ka', ['a']), kind('kd', ['d'])];
		const run = planRun(input({ chosen, syllabus: { skills, kinds } }));
		expect(run.items[0]?.skill).toBe('d');
	});

	test('says so once the skill is met', () => {
		const memories = new Map(five.map((id) => [id, rightOn(monday - 3)]));
		const run = planRun(input({ chosen, memories }));
		expect(run.items.every((i) => i.reason.kind === 'chosen')).toBe(true);
	});
});

test('a step that no kind aims at is practised by one that exercises it', () => {
	const syllabus = { skills: [skill('a'), skill('b')], kinds: [kind('k', ['a', 'b'])] };
	const memories = new Map([
		['a', rightOn(monday - 30)],
		['b', rightOn(monday - 1)]
	]);
	expect(planRun(input({ syllabus, memories })).items[0]).toMatchObject({ skill: 'a' });
});

test('a skill with kinds of its own is not practised by the way', () => {
	const kinds = [kind('kb', ['a', 'b']), kind('ka', ['a'])];
	const syllabus = { skills: [skill('a'), skill('b')], kinds };
	const memories = new Map([
		['a', rightOn(monday - 30)],
		['b', rightOn(monday - 1)]
	]);
	expect(planRun(input({ syllabus, memories })).items[0]?.kind.id).toBe('ka');
});

test('time practised already comes off the run', () => {
	expect(planRun(input()).budget - planRun(input({ spent: 100 })).budget).toBe(100);
	expect(planRun(input({ spent: 1e4 }))).toMatchObject({ items: [], budget: 0 });
});

describe('in every situation', () => {
	test('the same input gives the same run', () => {
		fc.assert(
			fc.property(someInput, (drawn) => {
				expect(planRun(structuredClone(drawn))).toEqual(planRun(drawn));
			})
		);
	});

	test('a run keeps to the portion of the day, however many days were missed', () => {
		fc.assert(
			fc.property(someInput, (drawn) => {
				const run = planRun(drawn);
				expect(run.budget).toBe(portionOn(drawn.course, drawn.day, drawn.pace.task).seconds);
				expect(runSeconds(run.items)).toBeLessThanOrEqual(run.budget);
			})
		);
	});

	test('a day off gets nothing', () => {
		fc.assert(
			fc.property(someInput, (drawn) => {
				fc.pre(isOff(drawn.course.off, drawn.day));
				expect(planRun(drawn).items).toEqual([]);
			})
		);
	});

	test('no skill is met before what it needs, and only then is it shown worked', () => {
		fc.assert(
			fc.property(someInput, (drawn) => {
				const met = new Set(drawn.memories.keys());
				for (const { kind: chosen, worked } of planRun(drawn).items) {
					const unmet = chosen.skills.filter((id) => !met.has(id));
					for (const id of chosen.skills) {
						const needs = drawn.syllabus.skills.find((s) => s.id === id)?.needs ?? [];
						const open = needs.filter((need) => !met.has(need) && !chosen.skills.includes(need));
						if (unmet.includes(id)) expect(open).toEqual([]);
					}
					expect(worked).toBe(unmet.length > 0);
					chosen.skills.forEach((id) => met.add(id));
				}
			})
		);
	});

	test('neighbours are of different kinds', () => {
		fc.assert(
			fc.property(someInput, (drawn) => {
				const { items } = planRun(drawn);
				items.forEach((i, at) => expect(i.kind.id).not.toBe(items[at + 1]?.kind.id));
			})
		);
	});

	test('and of different families while every skill is met and two families are left', () => {
		fc.assert(
			fc.property(someInput, (drawn) => {
				const { skills, kinds } = drawn.syllabus;
				const aimed = kinds.filter((k) => k.aim === k.skills[0]);
				fc.pre(new Set(aimed.map((k) => k.family)).size > 1);
				const memories = new Map(skills.map(({ id }) => [id, rightOn(monday - 40)]));
				const exam = drawn.day + 20;
				const { items } = planRun({ ...drawn, memories, course: { ...drawn.course, exam } });
				items.forEach((i, at) => expect(i.kind.family).not.toBe(items[at + 1]?.kind.family));
			})
		);
	});

	test('time left over is less than the shortest task, before the exam', () => {
		fc.assert(
			fc.property(someInput, (drawn) => {
				const exam = drawn.day + 20;
				fc.pre(new Set(drawn.syllabus.kinds.map((k) => k.id)).size > 1);
				const memories = new Map(drawn.syllabus.skills.map((s) => [s.id, rightOn(monday - 40)]));
				const run = planRun({ ...drawn, memories, course: { ...drawn.course, exam } });
				expect(run.budget - runSeconds(run.items)).toBeLessThan(drawn.pace.task);
			})
		);
	});
});
