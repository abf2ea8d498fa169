import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { forecast } from '../../../src/lib/engine/schedule/forecast.ts';
import { emptyMemory, recall, remember } from '../../../src/lib/engine/schedule/memory.ts';
import { type PlanInput, planRun } from '../../../src/lib/engine/schedule/plan.ts';
import { SHIPPED } from '../../../src/lib/engine/schedule/policy.ts';
import { monday, someInput } from './plan-arbitrary.ts';

const topics = ['rivets', 'bends', 'layout'];
const skills = Array.from({ length: 12 }, (_, i) => ({
	id: `s${i}`,
	topic: topics[i % 3] ?? '',
	needs: i < 3 ? [] : [`s${i - 3}`]
}));
const kinds = skills.map(({ id, topic }) => ({
	id: `k${id}`,
	family: topic,
	aim: id,
	skills: [id]
}));

const input = (numbers: Partial<PlanInput> = {}): PlanInput => ({
	syllabus: { skills, kinds },
	memories: new Map(),
	course: { start: monday, exam: monday + 28, minutes: 20, off: { weekdays: [0], dates: [] } },
	pace: { task: 120, worked: 60 },
	day: monday,
	...numbers
});
const minutes = (each: number) => ({ course: { ...input().course, minutes: each } });

describe('the forecast', () => {
	test('covers each study day until the exam and starts with the run of today', () => {
		const { days, until } = forecast(input());
		expect(until).toBe(monday + 28);
		expect(days).toHaveLength(24);
		expect(days.at(-1)).toMatchObject({ day: monday + 26, phase: 'sweep' });
		expect(days[0]?.tasks).toBe(planRun(input()).items.length);
	});

	test('tells today from memory and the exam day from the plan', () => {
		const memories = new Map([['s0', remember(emptyMemory, 'right', monday - 4)]]);
		const found = forecast(input({ memories }));
		const known = recall(memories.get('s0') ?? emptyMemory, monday);
		expect(found.all.today).toBeCloseTo(known / 12, 10);
		expect(found.topics.map((t) => t.topic)).toEqual(topics);
		expect(found.topics[0]?.today).toBeCloseTo(known / 4, 10);
		expect(found.topics[1]).toMatchObject({ today: 0, metThen: 4, steps: 4 });
		expect(found.all.then).toBeGreaterThan(found.all.today);
	});

	test('more minutes a day promise more', () => {
		const promised = [2, 4, 8].map((each) => forecast(input(minutes(each))).all.then);
		expect(promised).toEqual([...promised].sort((a, b) => a - b));
		expect(new Set(promised).size).toBe(3);
	});

	test.each([3, 7, 16, 40])('%i days: five minutes more never promise less', (exam) => {
		const course = { ...input().course, exam: monday + exam };
		const promised = Array.from({ length: 24 }, (_, i) => 5 * (i + 1)).map(
			(each) => forecast(input({ course: { ...course, minutes: each } })).all.then
		);
		const falls = promised.map((share, i) => Math.max(...promised.slice(0, i + 1)) - share);
		// What is rounded to whole percents may not go down.
		expect(Math.max(...falls)).toBeLessThan(0.005);
	});

	test('a topic left out is not planned, and counts for nothing', () => {
		const course = { ...input().course, without: ['bends'] };
		const found = forecast(input({ course }));
		expect(found.topics[1]).toMatchObject({ leftOut: true, nextDay: null, then: 0 });
		expect(found.all.steps).toBe(8);
		expect(found.unreached).toEqual([]);
		expect(found.all.then).toBeGreaterThan(forecast(input()).all.then - 0.05);
	});

	test('says which skills a short time does not reach', () => {
		const course = { ...input().course, exam: monday + 2, minutes: 10 };
		const { unreached } = forecast(input({ course }));
		expect(unreached.length).toBeGreaterThan(0);
		expect(unreached).not.toContain('s0');
		expect(forecast(input()).unreached).toEqual([]);
	});

	test('lists the weakest met skills, weakest first', () => {
		const memories = new Map(
			[3, 20, 9].map((ago, i) => [`s${i}`, remember(emptyMemory, 'right', monday - ago)] as const)
		);
		const { weakest } = forecast(input({ memories }), 2);
		expect(weakest.map((w) => w.skill)).toEqual(['s1', 's2']);
		expect(weakest[0]?.recall).toBe(recall(memories.get('s1') ?? emptyMemory, monday));
	});

	test('names the next day with a task of each topic', () => {
		const course = { ...input().course, minutes: 4 };
		const { topics: found } = forecast(input({ course }));
		expect(found[0]?.nextDay).toBe(monday);
		expect(found.every((t) => t.nextDay !== null && t.nextDay >= monday)).toBe(true);
	});

	test('names what was missed and not put right, and the next day with a task of it', () => {
		const missed = remember(emptyMemory, 'wrong', monday - 4);
		const memories = new Map([
			['s0', remember(emptyMemory, 'right', monday - 4)],
			['s1', missed],
			['s2', remember(missed, 'right', monday - 1)],
			['s3', remember(emptyMemory, 'wrong', monday - 1)]
		]);
		const found = forecast(input({ memories }));
		expect(found.missed.map((w) => w.skill)).toEqual(['s1', 's3']);
		expect(found.missed[0]).toEqual(found.weakest.find((w) => w.skill === 's1'));
	});

	test.each([
		{ when: 'today', rested: 4, exam: monday + 28, next: monday },
		{ when: 'two days after the miss', rested: 1, exam: monday + 28, next: monday + 1 },
		{ when: 'not any more', rested: 4, exam: monday, next: null }
	])('a missed skill comes back $when', ({ rested, exam, next }) => {
		const begun = remember(remember(emptyMemory, 'right', monday - 1), 'right', monday);
		const memories = new Map([
			['s0', begun],
			['s1', remember(emptyMemory, 'wrong', monday - rested)],
			['s2', begun]
		]);
		const situation = input({ memories, course: { ...input().course, minutes: 4, exam } });
		expect(forecast(situation).missed[0]?.nextDay).toBe(next);
		const today = planRun(situation).items.some((item) => item.skill === 's1');
		expect(today && exam > monday).toBe(next === monday);
	});

	test.each([
		{ when: 'without an exam', exam: null },
		{ when: 'after the exam', exam: monday - 3 }
	])('looks four weeks ahead $when', ({ exam }) => {
		const found = forecast(input({ course: { ...input().course, exam } }));
		expect(found.until).toBe(monday + 28);
		expect(found.days.every((d) => d.phase === 'keep')).toBe(true);
	});

	test('counts on misses, and on their return in the same run', () => {
		const policy = { ...SHIPPED, returns: 0, newReturns: 0 };
		expect(forecast(input({ policy })).all.then).not.toBe(forecast(input()).all.then);
	});

	test('time practised today comes off today only', () => {
		const pace = { task: 120, worked: 0 };
		const [all, rest] = [forecast(input({ pace })), forecast(input({ pace, spent: 1e4 }))];
		expect(rest.days[0]?.tasks).toBe(0);
		expect(rest.days[1]?.tasks).toBe(all.days[1]?.tasks);
	});
});

test('in every situation a forecast is repeatable, possible and leaves its input alone', () => {
	fc.assert(
		fc.property(someInput, (drawn) => {
			const before = structuredClone(drawn);
			const found = forecast(drawn);
			expect(drawn).toEqual(before);
			expect(forecast(before)).toEqual(found);
			for (const { today, then } of [found.all, ...found.topics]) {
				expect(Math.min(today, then)).toBeGreaterThanOrEqual(0);
				expect(Math.max(today, then)).toBeLessThanOrEqual(1);
			}
			for (const { minutes: each, tasks } of found.days) {
				expect(each).toBeLessThanOrEqual(2 * drawn.course.minutes + drawn.pace.task / 60);
				expect(each > 0).toBe(tasks > 0);
			}
		}),
		{ numRuns: 40 }
	);
});
