import { describe, expect, test } from 'vitest';
import { givenUpBy, standRows, weakSteps } from '../../../src/lib/app/plan/plan-view.ts';
import { leftToday } from '../../../src/lib/app/practice/run.ts';
import { loadPlanner } from '../../../src/lib/app/plan/planner.ts';
import type { Run, RunTask } from '../../../src/lib/app/practice/run.ts';
import { firstSettings } from '../../../src/lib/engine/schedule/course-settings.ts';
import { dayOf } from '../../../src/lib/engine/schedule/day.ts';
import { emptyLearning, type Learning } from '../../../src/lib/engine/schedule/learning.ts';
import { emptyMemory, remember } from '../../../src/lib/engine/schedule/memory.ts';

const planner = await loadPlanner();
const day = dayOf('2026-11-25');
const settings = { ...firstSettings('2026-11-20'), exam: '2026-12-11' };

/** Somebody who missed K for the wrong angle twice, and was right about the setback. */
function learningOfSome(): Learning {
	const missed = remember(remember(emptyMemory, 'wrong', day - 4), 'wrong', day - 2);
	return {
		...emptyLearning(),
		memories: {
			'piece/setback-k': missed,
			'piece/setback': remember(emptyMemory, 'right', day - 2)
		},
		slips: { 'piece/setback-k': { slip: 'legs', day: day - 2, times: 2 } }
	};
}
const learning = learningOfSome();
const forecast = planner.forecast({ learning, settings, day });

const task = (change: Partial<RunTask>): RunTask => {
	return { number: 'BS1-0001-3J', standing: 'open', ...change };
};
const run = (tasks: RunTask[], change: Partial<Run> = {}): Run => {
	return { id: 'r', topic: 'plan', level: 1, at: 0, day, budget: 0, tasks, ...change };
};

describe('where one stands', () => {
	const rows = standRows(planner, forecast, learning);

	test('counts every step once, and those met', () => {
		const all = rows.reduce((sum, { steps }) => sum + steps, 0);
		expect(all).toBe(planner.syllabus.skills.length);
		expect(rows.map(({ met }) => met).filter(Boolean)).toEqual([2]);
		expect(rows.find(({ name }) => name === 'Bends')?.met).toBe(2);
	});

	test('tells the shares of the forecast', () => {
		expect(rows.map(({ now, then }) => ({ today: now, then }))).toEqual(
			forecast.topics.map(({ today, then }) => ({ today, then }))
		);
	});
});

describe('what to look at first', () => {
	test('is the weakest step, with the slip that was made in it', () => {
		const [first, second] = weakSteps(planner, forecast, learning, null);
		expect(first).toMatchObject({
			label: 'K for the bend angle',
			work: expect.stringMatching(/^Setback and \d more$/) as string,
			missedDay: day - 2,
			slip: { times: 2, day: day - 2 }
		});
		expect(first?.slip?.says).toContain('K is read for the bend angle, from flat');
		expect(first?.nextDay).toBe(forecast.missed[0]?.nextDay);
		expect(second).toMatchObject({ label: 'Setback', slip: null, missedDay: null });
	});

	test('is what was missed before what is weaker, and five steps in all', () => {
		const right = remember(emptyMemory, 'right', day - 30);
		const putRight = remember(remember(emptyMemory, 'wrong', day), 'right', day);
		const weaker = Object.fromEntries(
			planner.syllabus.skills.slice(0, 8).map(({ id }) => [id, right])
		);
		const put = { ...learning, memories: { ...weaker, 'piece/setback-k': putRight } };
		const found = planner.forecast({ learning: put, settings, day });
		expect(found.weakest[0]?.skill).not.toBe('piece/setback-k');
		const steps = weakSteps(planner, found, put, null).map(({ skill }) => skill);
		expect(steps[0]).toBe('piece/setback-k');
		expect(steps.slice(1)).toEqual(
			found.weakest
				.filter(({ skill }) => skill !== 'piece/setback-k')
				.map(({ skill }) => skill)
				.slice(0, 4)
		);
	});

	test('comes up today when it waits in the run that is under way', () => {
		const planned = {
			kind: 'BS1',
			skill: 'piece/setback-k',
			reason: { kind: 'missed', skill: 'piece/setback-k', day } as const,
			worked: false,
			seconds: 120,
			reading: 0,
			returned: true
		};
		const returning = run([task({ standing: 'wrong' }), task({ planned })]);
		expect(weakSteps(planner, forecast, learning, returning)[0]?.nextDay).toBe(day);
		const done = run([task({ planned, standing: 'right' })]);
		expect(weakSteps(planner, forecast, learning, done)[0]?.nextDay).toBe(
			forecast.missed[0]?.nextDay
		);
	});
});

test('what is given up is told by topic, a shared label once', () => {
	const unreached = [
		'shop-head-check/leastWidth',
		'piece/setback-k',
		'shop-head/width',
		'piece/grip'
	];
	expect(givenUpBy(planner, unreached)).toEqual([
		{
			topic: 'rivets',
			name: 'Rivets',
			steps: 3,
			labels: [
				'Grip: everything the rivet passes through',
				'Width of the shop head',
				'Minimum width'
			]
		},
		{ topic: 'bends', name: 'Bends', steps: 1, labels: ['K for the bend angle'] }
	]);
	expect(givenUpBy(planner, [])).toEqual([]);
});

test('what is left of today’s run is what is not answered; other runs do not count', () => {
	const tasks = [task({ standing: 'shown' }), task({ standing: 'right' }), task({})];
	expect(leftToday(run(tasks), day)).toEqual([task({})]);
	expect(leftToday(run(tasks, { day: day - 1 }), day)).toEqual([]);
	expect(leftToday(run(tasks, { topic: 'bends' }), day)).toEqual([]);
	expect(leftToday(null, day)).toEqual([]);
});

test('a task of a step is fresh and exercises it', () => {
	const below = (limit: number) => Math.floor(limit / 3);
	for (const { id } of planner.syllabus.skills) {
		const number = planner.taskFor(id, { learning, settings, day }, below) ?? '';
		const kind = planner.syllabus.kinds.find((one) => number.startsWith(one.id));
		expect(kind?.skills).toContain(id);
	}
	expect(planner.taskFor('no/such', { learning, settings, day }, below)).toBeNull();
});
