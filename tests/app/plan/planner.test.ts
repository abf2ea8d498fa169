import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { freshNumber, type Known, loadPlanner } from '../../../src/lib/app/plan/planner.ts';
import type { Run, RunTask } from '../../../src/lib/app/practice/run.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { readTaskNumber } from '../../../src/lib/engine/tasks/task-number.ts';
import { firstSettings } from '../../../src/lib/engine/schedule/course-settings.ts';
import { dayOf, isoOf } from '../../../src/lib/engine/schedule/day.ts';
import { givensOf, numbersIn } from '../../../src/lib/engine/tasks/givens.ts';
import { emptyLearning } from '../../../src/lib/engine/schedule/learning.ts';
import { belowFrom } from '../seeded-chance.ts';
import { SimulatedLearner } from '../simulated-learner.ts';

const planner = await loadPlanner();
const start = '2026-03-02';
const monday = dayOf(start);

function givensAt(number: string): string {
	const { code, level, seed } = readTaskNumber(number);
	const family = planner.families.find((one) => one.code === code);
	if (!family) throw new Error(`no family: ${code}`);
	return givensOf(drawTask(family, level, seed));
}

/** What is known of somebody after some days of the plan, a task in three missed. */
function knownAfter(days: number, seed = 1): Known {
	const below = belowFrom(seed);
	const learner = new SimulatedLearner(planner, firstSettings(start), below);
	for (let day = monday; day < monday + days; day++) learner.practise(day, () => below(10) < 3);
	return learner.known(monday + days);
}

function runFor(known: Known, seed = 1): Run {
	return planner.run(planner.today(known), known, 'run', belowFrom(seed));
}

const newcomer: Known = { learning: emptyLearning(), settings: firstSettings(start), day: monday };

test('with time enough, every step gets its turn', () => {
	const settings = { ...firstSettings(start), exam: isoOf(monday + 30), minutes: 240 };
	expect(planner.forecast({ ...newcomer, settings }).unreached).toEqual([]);
});

describe('a run from the plan', () => {
	test('has a task for every planned item, in order', () => {
		const known = knownAfter(6);
		const planned = planner.today(known);
		const run = planner.run(planned, known, 'run', belowFrom(1));
		const asked = run.tasks.filter(({ standing }) => standing === 'open');
		expect(asked.length).toBeGreaterThan(5);
		expect(asked.map(({ planned }) => [planned?.kind, planned?.skill])).toEqual(
			planned.items.map(({ kind, skill }) => [kind.id, skill])
		);
		expect(run).toMatchObject({ topic: 'plan', at: 0, day: known.day, budget: planned.budget });
	});

	test('shows a worked task of the kind, with other numbers, before one that is met first', () => {
		const { tasks } = runFor(newcomer);
		expect(tasks.some(({ standing }) => standing === 'shown')).toBe(true);
		tasks.forEach((task, i) => {
			if (task.standing === 'open') {
				expect(tasks[i - 1]?.standing === 'shown').toBe(task.planned?.worked);
			} else {
				expect(tasks[i + 1]).toMatchObject({ standing: 'open', planned: task.planned });
				expect(givensAt(tasks[i + 1]?.number ?? '')).not.toBe(givensAt(task.number));
			}
		});
	});

	test('two misses on a Wednesday return the same day and on Friday, with new numbers', () => {
		const wednesday = monday + 2;
		const settings = { ...firstSettings(start), minutes: 20, exam: isoOf(wednesday + 23) };
		const learner = new SimulatedLearner(planner, settings, belowFrom(3));
		const { met } = learner;
		learner.practise(wednesday, () => met.length < 2);
		const missed = met.filter(({ right }) => !right).map(({ runTask }) => runTask.planned?.kind);
		expect(missed).toHaveLength(2);
		const returned = met.filter(({ runTask }) => runTask.planned?.returned);
		expect(returned.map(({ runTask }) => runTask.planned?.kind)).toEqual(missed);
		const skills = returned.map(({ runTask }) => runTask.planned?.skill);
		const friday = runFor(learner.known(wednesday + 2));
		for (const skill of skills) {
			const task = friday.tasks.find(({ planned }) => planned?.skill === skill);
			expect(task?.planned?.reason).toEqual({ kind: 'missed', skill, day: wednesday });
			const before = met.map(({ runTask: { number } }) => givensAt(number));
			expect(before).not.toContain(givensAt(task?.number ?? ''));
		}
	});

	test('has no numbers twice', () => {
		const givens = runFor(newcomer).tasks.map(({ number }) => givensAt(number));
		expect(new Set(givens).size).toBe(givens.length);
	});

	test('is shorter by what was practised today already', () => {
		const before = planner.today(newcomer).items.length;
		const days = { [monday]: { right: 1, helped: 0, wrong: 0, seconds: 20 * 60 } };
		const learning = { ...emptyLearning(), days };
		const after = planner.today({ ...newcomer, learning });
		expect(after.budget).toBe(5 * 60);
		expect(after.items.length).toBeLessThan(before);
	});
});

describe('the forecast of the rest', () => {
	test('says of the next day only what its run then has, though there is time left today', () => {
		const settings = { ...firstSettings(start), exam: isoOf(monday + 40) };
		const learner = new SimulatedLearner(planner, settings, belowFrom(4));
		let said: string[] = [];
		let left = 0;
		for (let day = monday; day < monday + 8; day++) {
			const { items } = planner.today(learner.known(day));
			const skills = new Set(items.flatMap(({ kind }) => kind.skills));
			if (items.length > 0) expect(said.filter((one) => !skills.has(one))).toEqual([]);
			learner.practise(day, ({ number }) => number.charCodeAt(9) % 3 === 0);
			left += planner.today(learner.known(day)).items.length;
			const { comesUp, days } = planner.forecastOfRest(learner.known(day));
			const next = days.find((one) => one.day > day)?.day ?? 0;
			said = [...comesUp].flatMap(([skill, on]) => (on.includes(next) ? skill : []));
			expect(said.length).toBeGreaterThan(0);
		}
		expect(left).toBeGreaterThan(0);
	});
});

describe('fresh numbers', () => {
	const fresh = (kind: string, stale: Set<string>) =>
		freshNumber(kind, stale, belowFrom(5), planner.families);
	/** All that some seeds of a kind come to. */
	const givensOfKind = (kind: string) => {
		const family = planner.families.find(({ code }) => kind.startsWith(code));
		if (!family) throw new Error(`no family: ${kind}`);
		const level = kind.endsWith('1') ? 1 : kind.endsWith('2') ? 2 : 3;
		return Array.from({ length: 1000 }, (_, seed) => givensOf(drawTask(family, level, seed)));
	};

	test('are of the kind while it has any, and are stale from then on', () => {
		const stale = new Set<string>();
		const numbers = Array.from({ length: 5 }, () => fresh('RT1', stale));
		expect(numbers.filter((number) => !number.startsWith('RT1'))).toEqual([]);
		expect(stale).toEqual(new Set(numbers.map(givensAt)));
		expect(stale.size).toBe(5);
	});

	test('come from another level of the family before numbers are repeated', () => {
		const stale = new Set(givensOfKind('BR1'));
		const number = fresh('BR1', stale);
		expect(number.slice(0, 2)).toBe('BR');
		expect(number.slice(0, 3)).not.toBe('BR1');
		expect([...stale].map(numbersIn).filter((one) => one === numbersIn(givensAt(number)))).toEqual([
			numbersIn(givensAt(number))
		]);
	});

	test('are repeated with another question before a question is', () => {
		// The drills of the chart are few, and the same at every level.
		const stale = new Set(givensOfKind('HD1'));
		const before = new Set(stale);
		const number = fresh('HD1', stale);
		expect(before.has(givensAt(number))).toBe(false);
		expect([...before].map(numbersIn)).toContain(numbersIn(givensAt(number)));
	});

	test('are repeated when there is nothing else', () => {
		const stale = new Set(['HD1', 'HD2', 'HD3'].flatMap(givensOfKind));
		expect(fresh('HD2', stale)).toMatch(/^HD2-/);
	});

	test('of a kind that is not there are a mistake of ours', () => {
		expect(() => fresh('XX1', new Set())).toThrow('unknown kind of task: XX1');
	});
});

const opened: RunTask = { number: 'RL1-00C8-8D', standing: 'open' };

const knowns = [0, 1, 4, 9].flatMap((days) => [1, 2, 3].map((seed) => knownAfter(days, seed)));

/** A run from the plan, some tasks into it, with others opened by hand in between. */
const someRun = fc
	.record({
		known: fc.constantFrom(...knowns),
		seed: fc.nat(1000),
		at: fc.nat(30),
		opened: fc.array(fc.nat(30), { maxLength: 3 })
	})
	.map(({ known, seed, at, opened: places }) => {
		const planned = runFor(known, seed);
		const tasks = places.reduce((all, place) => all.toSpliced(place, 0, opened), planned.tasks);
		return { known, run: { ...planned, tasks, at: at % tasks.length } };
	})
	.filter(({ run }) => run.tasks[run.at]?.standing !== 'shown');

describe('after a miss', () => {
	test('the task is back once, with new numbers, and the rest keeps its order', () => {
		fc.assert(
			fc.property(someRun, fc.nat(1000), ({ known, run }, seed) => {
				const missed = run.tasks[run.at];
				const miss = { index: run.at, skill: undefined };
				const after = planner.missed(run, known, miss, belowFrom(seed));
				if (!missed?.planned) {
					expect(after).toBe(run);
					return;
				}
				const added = after.tasks.filter((task) => !run.tasks.includes(task));
				expect(added).toHaveLength(1);
				const [back] = added;
				if (!back) return;
				expect(back.planned).toMatchObject({
					kind: missed.planned.kind,
					returned: true,
					reading: 0,
					reason: { kind: 'missed', skill: missed.planned.skill, day: run.day }
				});
				expect(run.tasks.map(({ number }) => givensAt(number))).not.toContain(
					givensAt(back.number)
				);
				// What was done stays, and so does where the person is.
				expect(after.tasks.slice(0, run.at + 1)).toEqual(run.tasks.slice(0, run.at + 1));
				expect(after.at).toBe(run.at);
				const kept = after.tasks.filter((task) => task !== back);
				expect(kept).toEqual(run.tasks.filter((task) => kept.includes(task)));
			}),
			{ numRuns: 200 }
		);
	});

	test('it stands after two or three others, or at the end when that does not fit', () => {
		let inPlace = 0;
		fc.assert(
			fc.property(someRun, ({ known, run }) => {
				if (!run.tasks[run.at]?.planned) return;
				const miss = { index: run.at, skill: undefined };
				const { tasks } = planner.missed(run, known, miss, belowFrom(1));
				const place = tasks.findIndex((task) => !run.tasks.includes(task));
				if (place === tasks.length - 1) return;
				inPlace++;
				const between = tasks
					.slice(run.at + 1, place)
					.filter(({ planned, standing }) => planned && standing !== 'shown');
				expect([2, 3]).toContain(between.length);
			}),
			{ numRuns: 200 }
		);
		expect(inPlace).toBeGreaterThan(20);
	});

	test('only last tasks of the plan make room, each with its worked one, never one opened by hand', () => {
		let dropped = 0;
		fc.assert(
			fc.property(someRun, ({ known, run }) => {
				const miss = { index: run.at, skill: undefined };
				const { tasks } = planner.missed(run, known, miss, belowFrom(1));
				const gone = run.tasks.filter((task) => !tasks.includes(task));
				dropped += gone.length;
				expect(gone.filter(({ planned }) => !planned)).toEqual([]);
				const asked = run.tasks.filter((one) => one.planned && one.standing !== 'shown');
				const goneAsked = gone.filter(({ standing }) => standing !== 'shown');
				expect(asked.slice(asked.length - goneAsked.length)).toEqual(goneAsked);
				// Where the two were together before, they still are.
				run.tasks.forEach((task, i) => {
					const next = run.tasks[i + 1];
					if (task.standing !== 'shown' || !next?.planned) return;
					expect(tasks.includes(task)).toBe(tasks.includes(next));
					if (tasks.includes(task)) expect(tasks[tasks.indexOf(task) + 1]).toBe(next);
				});
			}),
			{ numRuns: 200 }
		);
		expect(dropped).toBeGreaterThan(20);
	});

	test('the return names the skill the slip sits in', () => {
		const run = { ...runFor(newcomer), at: 1 };
		const skill = run.tasks[1]?.planned?.skill.replace(/\/.*/, '/other');
		const { tasks } = planner.missed(run, newcomer, { index: 1, skill }, belowFrom(1));
		const back = tasks.find(({ planned }) => planned?.returned);
		expect(back?.planned).toMatchObject({ skill, reason: { kind: 'missed', skill } });
	});

	test('a return that is missed too waits for another day', () => {
		const run = { ...runFor(newcomer), at: 1 };
		const once = planner.missed(run, newcomer, { index: 1, skill: undefined }, belowFrom(1));
		const index = once.tasks.findIndex(({ planned }) => planned?.returned);
		const at = { ...once, at: index };
		expect(planner.missed(at, newcomer, { index, skill: undefined }, belowFrom(1))).toBe(at);
	});

	test('somebody who has gone on already finds it at the end, and loses nothing', () => {
		const run = { ...runFor(newcomer), at: 6 };
		const after = planner.missed(run, newcomer, { index: 1, skill: undefined }, belowFrom(1));
		expect(after.tasks.slice(0, -1)).toEqual(run.tasks);
		expect(after.tasks.at(-1)?.planned).toMatchObject({ returned: true });
		expect(after.at).toBe(6);
	});
});

describe('the words of a skill', () => {
	test('are its label and the sentence of its slip', () => {
		expect(planner.label('piece/shank')).toBe('Shank for the shop head');
		expect(planner.slipSays('piece/shank', 'oneD')).toBe('1D for the shop head: it takes 1.5D.');
	});

	test('are the step, and nothing, when an older copy no longer has them', () => {
		expect(planner.label('gone/step')).toBe('step');
		expect(planner.slipSays('gone/step', 'oneD')).toBe('');
	});
});
