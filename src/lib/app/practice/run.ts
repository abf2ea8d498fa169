import { type Card, type TopicId, topicIds, topics } from '$lib/engine/families/topics.ts';
import { cardByCode } from '$lib/engine/families/catalogue.ts';
import type { Level } from '$lib/engine/families/level.ts';
import { seedCount, writeTaskNumber } from '$lib/engine/tasks/task-number.ts';
import type { Reason } from '$lib/engine/schedule/run.ts';

/** What a run draws from: one topic, all of them in turn, or the plan for the day. */
export type RunTopic = TopicId | 'mixed' | 'plan';

/** What a run by free choice is called: one that a task of another topic joined is mixed. */
export function nameOf({ topic, tasks }: Pick<Run, 'topic' | 'tasks'>): string {
	const isJoined = tasks.some(({ number }) => cardByCode(number.slice(0, 2))?.topic !== topic);
	return topicName(topic !== 'plan' && isJoined ? 'mixed' : topic);
}

/** What somebody may choose by hand. */
export const freeTopics: readonly (TopicId | 'mixed')[] = ['mixed', ...topicIds];

export function topicName(topic: RunTopic): string {
	if (topic === 'plan') return 'Today’s tasks';
	return topic === 'mixed' ? 'Mixed' : topics[topic];
}

/** What is kept of the work on a task when the page is left. */
export interface KeptNotes {
	typed: Record<string, string>;
	opened: number;
	byStep: boolean;
	worked: boolean;
	/** Slips that the person has said to have made. */
	told?: readonly string[] | undefined;
	/** Lines of scratch arithmetic, as typed. */
	scratch?: readonly string[] | undefined;
	/** How often what was typed has been checked; the verdict is then shown again. */
	checks: number;
}

/** What the plan holds of one task. */
export interface Planned {
	/** Id of the kind of task: family code and level. */
	kind: string;
	skill: string;
	reason: Reason;
	seconds: number;
	/** Whether another of the kind is shown worked before it. */
	worked: boolean;
	reading: number;
	returned: boolean;
}

export interface RunTask {
	number: string;
	/** `shown` tasks are worked examples: read, not answered. */
	standing: 'open' | 'right' | 'helped' | 'wrong' | 'shown';
	notes?: KeptNotes | undefined;
	planned?: Planned | undefined;
	/** Skills charged by the checks so far. */
	charged?: string[] | undefined;
}

/** A sitting: tasks one after another, and where the person is. */
export interface Run {
	id: string;
	topic: RunTopic;
	level: Level;
	at: number;
	/** Day and seconds of a run from the plan. */
	day: number;
	budget: number;
	/** Whether a run by free choice is over after its last task. */
	ends?: boolean | undefined;
	tasks: RunTask[];
}

/** Chance comes in as a function that gives a whole number below its argument. */
export type Below = (limit: number) => number;

export function newTask(card: Card, level: Level, below: Below): RunTask {
	return { number: numberOf(card, level, below(seedCount)), standing: 'open' };
}

export function numberOf(card: Card, level: Level, seed: number): string {
	return writeTaskNumber({ code: card.code, level, seed, rev: card.rev });
}

/** The tasks of the plan's run for `day` that are still to be answered. */
export function leftToday(run: Run | null, day: number): RunTask[] {
	return run?.topic === 'plan' && run.day === day ? leftIn(run) : [];
}

/** The tasks of a run that are still to be answered. */
export function leftIn(run: Run | null): RunTask[] {
	return (run?.tasks ?? []).filter(({ standing }) => standing === 'open');
}

/** The run with its open task changed. */
export function withOpen(run: Run, change: (task: RunTask) => RunTask): Run {
	return { ...run, tasks: run.tasks.map((task, i) => (i === run.at ? change(task) : task)) };
}
