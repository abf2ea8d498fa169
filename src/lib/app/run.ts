import * as v from 'valibot';
import { type Card, type TopicId, topicIds, topics } from '$lib/engine/families/card.ts';
import { cards, cardsOf } from '$lib/engine/families/catalogue.ts';
import { type Level, seedCount, writeTaskNumber } from '$lib/engine/families/task-number.ts';

/** What a run draws from: one topic, or all of them in turn. */
export type RunTopic = TopicId | 'mixed';

export const runTopics: readonly RunTopic[] = ['mixed', ...topicIds];

export function topicName(topic: RunTopic): string {
	return topic === 'mixed' ? 'Mixed' : topics[topic];
}

export const runLength = 10;

const notesSchema = v.object({
	typed: v.record(v.string(), v.pipe(v.string(), v.maxLength(300))),
	opened: v.pipe(v.number(), v.integer(), v.minValue(0)),
	byStep: v.boolean(),
	worked: v.boolean(),
	/** Whether what is typed has been checked, so that the verdict is shown again. */
	checked: v.boolean()
});

export type KeptNotes = v.InferOutput<typeof notesSchema>;

const runTaskSchema = v.object({
	number: v.string(),
	standing: v.picklist(['open', 'right', 'helped', 'wrong']),
	notes: v.optional(notesSchema)
});

export type RunTask = v.InferOutput<typeof runTaskSchema>;

const runSchema = v.object({
	topic: v.picklist(runTopics),
	level: v.picklist([1, 2, 3]),
	at: v.pipe(v.number(), v.integer(), v.minValue(0)),
	tasks: v.pipe(v.array(runTaskSchema), v.minLength(1), v.maxLength(200))
});

/** A sitting: tasks one after another, and where the person is. */
export type Run = v.InferOutput<typeof runSchema>;

/** A run read back from storage, or null when there is none or it cannot be used. */
export function readRun(text: string | null): Run | null {
	if (text === null) return null;
	try {
		const read = v.safeParse(runSchema, JSON.parse(text));
		return read.success && read.output.at < read.output.tasks.length ? read.output : null;
	} catch {
		return null;
	}
}

/** Chance comes in as a function that gives a whole number below its argument. */
export type Below = (limit: number) => number;

export function newTask(card: Card, level: Level, below: Below): RunTask {
	const seed = below(seedCount);
	return {
		number: writeTaskNumber({ code: card.code, level, seed, rev: card.rev }),
		standing: 'open'
	};
}

export function newRun(topic: RunTopic, level: Level, below: Below): Run {
	const order = topic === 'mixed' ? mixed(below) : shuffled(cardsOf(topic), below);
	const tasks = Array.from({ length: runLength }, (_, i) =>
		newTask(order[i % order.length] as Card, level, below)
	);
	return { topic, level, at: 0, tasks };
}

/** Kinds of task of all topics, so that neighbours come from different topics. */
function mixed(below: Below): Card[] {
	const piles = topicIds.map((topic) => shuffled(cardsOf(topic), below));
	const order: Card[] = [];
	for (let row = 0; order.length < cards.length; row++) {
		for (const pile of piles) {
			const card = pile[row];
			if (card) order.push(card);
		}
	}
	return order;
}

function shuffled<T>(list: readonly T[], below: Below): T[] {
	const rest = [...list];
	return list.map(() => rest.splice(below(rest.length), 1)[0] as T);
}
