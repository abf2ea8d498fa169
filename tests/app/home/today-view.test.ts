import { expect, test } from 'vitest';
import { mixOf, todayView } from '../../../src/lib/app/home/today-view.ts';
import { loadPlanner } from '../../../src/lib/app/plan/planner.ts';
import type { Planned, Run } from '../../../src/lib/app/practice/run.ts';
import { firstSettings } from '../../../src/lib/engine/schedule/course-settings.ts';
import { isoOf } from '../../../src/lib/engine/schedule/day.ts';
import { emptyLearning } from '../../../src/lib/engine/schedule/learning.ts';
import { emptyMemory, remember } from '../../../src/lib/engine/schedule/memory.ts';

type Work = Parameters<typeof mixOf>[0];

/** A day's work by the reason of each task, and whether a new step is worked before it. */
const workOf = (...tasks: [kind: string, worked: boolean][]): Work =>
	tasks.map(([kind, worked]) => ({ reason: { kind }, worked })) as unknown as Work;
const mix = (...tasks: [kind: string, worked: boolean][]) =>
	mixOf(workOf(...tasks), ({ reason }) => reason.kind === 'missed');

test('the numbers of a day add up to its tasks', () => {
	expect(mix(['missed', true], ['missed', false], ['new', true], ['due', true])).toBe(
		'Two bring back a miss, two have a new step.'
	);
	expect(mix(['missed', true])).toBe('One brings back a miss.');
	expect(mix(['due', false], ['new', false], ['due', false])).toBe(
		'One has a new step, two keep what you know.'
	);
	expect(mix()).toBe('');
});

const planner = await loadPlanner();
const day = 20_784;
const settings = firstSettings(isoOf(day));

/** The first page of somebody who missed a step, on a day with a task that is there for another. */
function viewWith(run: Run | null) {
	const kind = planner.syllabus.kinds.find(({ skills }) => skills.length > 2);
	const [missed = '', other = ''] = kind?.skills ?? [];
	const learning = emptyLearning();
	learning.memories[missed] = remember(emptyMemory, 'wrong', day);
	learning.memories[other] = remember(emptyMemory, 'right', day - 3);
	// Of a step that is no more, and of one left out: neither is seen of those that the plan counts.
	learning.memories['gone/step'] = remember(emptyMemory, 'right', day - 3);
	const planned: Planned = {
		...{ kind: kind?.id ?? '', skill: other, seconds: 60, worked: false, reading: 0 },
		...{ reason: { kind: 'fading', skill: other, day: day - 3, recall: 0.8 }, returned: false }
	};
	const forecast = planner.forecast({ learning, settings, day });
	const facts = { planner, learning, forecast, day, exam: day + 9, offToday: false };
	return { view: todayView({ ...facts, planned: [planned], run }), missed, other };
}

test('a step that was missed is told to come back also where a task is there for another', () => {
	const { view, missed, other } = viewWith(null);
	expect(view.back.map(({ skill }) => skill)).toEqual([missed, other]);
	expect(view.back[0]?.why).toBe('Missed today.');
	expect(view.says).toBe('One brings back a miss.');
});

test('only steps that the plan counts are seen', () => {
	expect(viewWith(null).view.met).toBe(2);
});

test('once the work of the day is done its mark says so, and more of it is beyond', () => {
	const run = { id: 'r', topic: 'plan', level: 1, at: 0, day, budget: 0, tasks: [] } as const;
	const { view } = viewWith({ ...run, tasks: [] });
	expect(view.marks[0]).toEqual({ day, label: 'done', done: true });
	expect(view.act).toEqual({ kind: 'start', name: 'Work one more', beyond: true });
});
