import type { Level } from '$lib/engine/families/level.ts';
import { type Card, cards, cardsOf, type TopicId, topicIds } from '$lib/engine/families/topics.ts';
import { shuffled } from '$lib/engine/sets/shuffled.ts';
import { whenIdle } from '$lib/ui/late.ts';
import { newId } from '$lib/storage/new-id.ts';
import { below } from '../device/chance.ts';
import { device } from '../device/device.svelte.ts';
import { plan } from '../plan/plan.svelte.ts';
import type { Practice } from './practice.svelte.ts';
import { type Below, newTask, type Run, type RunTask } from './run.ts';

/*
 * Runs by free choice. Loaded late: a task that is opened by its number needs none.
 */

const runLength = 10;

/** Levels of the tasks after a lesson. */
const afterLesson: readonly Level[] = [1, 1, 2, 2, 3];

/**
 * Starts a run for somebody who asked for none in particular. Who is not known here gets the first
 * task at once, for nobody who has just arrived waits for a plan; what comes after it is worked first
 * where it is new, as always.
 */
export async function startUnasked(practice: Practice): Promise<void> {
	if (device.learnerId !== null) return startChosen(practice, 'mixed', 1);
	await startFree(practice, 'mixed', 1);
	void new Promise<void>(whenIdle).then(() => workAhead(practice));
}

/** Starts ten tasks of a topic, or of all, as they come: nothing is asked of the log. */
export async function startFree(
	practice: Practice,
	topic: TopicId | 'mixed',
	level: Level
): Promise<void> {
	practice.keep(newRun(topic, level, newId(), below));
	await practice.go(0);
}

/** The same, with a worked task before each in which a step is met for the first time. */
export async function startChosen(
	practice: Practice,
	topic: TopicId | 'mixed',
	level: Level
): Promise<void> {
	const run = newRun(topic, level, newId(), below);
	practice.keep({ ...run, tasks: [...(await withWorked(run.tasks))] });
	await practice.go(0);
}

/** Starts the practice that follows a lesson: five tasks of its family, from easy to hard. */
export async function startAfterLesson(practice: Practice, card: Card): Promise<void> {
	const tasks = await withWorked(afterLesson.map((level) => newTask(card, level, below)));
	const run = { id: newId(), topic: card.topic, level: 1, day: 0, budget: 0 } as const;
	practice.keep({ ...run, ends: true, at: 0, tasks: [...tasks] });
	await practice.go(0);
}

/** Puts a worked task before each to come in which a step is met for the first time. */
async function workAhead(practice: Practice): Promise<void> {
	const before = practice.run;
	await plan.load().catch(() => {});
	const { run } = practice;
	if (!run || run.id !== before?.id) return;
	const ahead = await withWorked(run.tasks.slice(run.at + 1));
	// Whoever is being talked to by then goes on as the run is.
	if (practice.run === run) {
		practice.keep({ ...run, tasks: [...run.tasks.slice(0, run.at + 1), ...ahead] });
	}
}

/** Puts one more task at the end of a run, and before it a worked one where it is new. */
export async function addOne(practice: Practice, topic: TopicId | 'mixed'): Promise<void> {
	const before = practice.run;
	if (!before) return;
	const more = oneMore(before, topic);
	coming = null;
	const added = await more;
	// What was noted meanwhile stays.
	const { run } = practice;
	if (run?.id === before.id) practice.keep({ ...run, tasks: [...run.tasks, ...added] });
}

/** What comes after the end of a run, and what it rests on. */
let coming: { basis: readonly unknown[]; tasks: Promise<readonly RunTask[]> } | null = null;

/**
 * The task that would be put at the end of a run, and before it a worked one where it is new: the
 * same ones until they are, or until what the learner has met or set changes.
 */
export function oneMore(run: Run, topic: TopicId | 'mixed'): Promise<readonly RunTask[]> {
	const { learning, course } = device;
	const basis = [run.id, topic, learning, course, plan.day];
	if (!coming || basis.some((one, i) => one !== coming?.basis[i])) {
		const drawn = newRun(topic, run.level, run.id, below).tasks.slice(0, 1);
		coming = { basis, tasks: withWorked(drawn) };
	}
	return coming.tasks;
}

/** As they are where the plan cannot be had: one family at fault stops nobody's run. */
async function withWorked(tasks: readonly RunTask[]): Promise<readonly RunTask[]> {
	try {
		return await plan.withWorked(tasks, below);
	} catch {
		return tasks;
	}
}

/** A run by free choice: ten tasks of a topic, or of all topics taking turns. */
function newRun(topic: TopicId | 'mixed', level: Level, id: string, below: Below): Run {
	const order = topic === 'mixed' ? mixed(below) : shuffled(cardsOf(topic), below);
	const tasks = Array.from({ length: runLength }, (_, i) =>
		newTask(order[i % order.length] as Card, level, below)
	);
	return { id, topic, level, at: 0, day: 0, budget: 0, tasks };
}

/** Kinds of task of all topics, so that neighbours come from different topics. */
function mixed(below: Below): Card[] {
	// Topics list their kinds from easy to hard: nobody begins with the last of them.
	const piles = topicIds.map((topic) => {
		const kinds = cardsOf(topic);
		const half = Math.ceil(kinds.length / 2);
		return [...shuffled(kinds.slice(0, half), below), ...shuffled(kinds.slice(half), below)];
	});
	const order: Card[] = [];
	for (let row = 0; order.length < cards.length; row++) {
		for (const pile of piles) {
			const card = pile[row];
			if (card) order.push(card);
		}
	}
	return order;
}
