import * as v from 'valibot';
import { type Card, type TopicId, topicIds, topics } from '$lib/engine/families/card.ts';
import { cards, cardsOf } from '$lib/engine/families/catalogue.ts';
import { type Level, seedCount, writeTaskNumber } from '$lib/engine/families/task-number.ts';

/** What a run draws from: one topic, all of them in turn, or the plan for the day. */
export type RunTopic = TopicId | 'mixed' | 'plan';

/** What somebody may choose by hand. */
export const freeTopics: readonly (TopicId | 'mixed')[] = ['mixed', ...topicIds];

export function topicName(topic: RunTopic): string {
	if (topic === 'plan') return 'Today’s tasks';
	return topic === 'mixed' ? 'Mixed' : topics[topic];
}

export const runLength = 10;

const count = v.pipe(v.number(), v.integer(), v.minValue(0));

const notesSchema = v.object({
	typed: v.record(v.string(), v.pipe(v.string(), v.maxLength(300))),
	opened: count,
	byStep: v.boolean(),
	worked: v.boolean(),
	/** How often what was typed has been checked; the verdict is then shown again. */
	checks: count
});

export type KeptNotes = v.InferOutput<typeof notesSchema>;

/** Why the plan chose a task, as the scheduler says it. */
const reasonSchema = v.variant('kind', [
	v.object({ kind: v.literal('missed'), skill: v.string(), day: v.number() }),
	v.object({ kind: v.literal('fading'), skill: v.string(), day: v.number(), recall: v.number() }),
	v.object({ kind: v.literal('new'), skill: v.string(), worked: v.boolean() }),
	v.object({ kind: v.literal('sweep'), skill: v.string(), exam: v.number() }),
	v.object({ kind: v.literal('chosen'), skill: v.string() })
]);

const plannedSchema = v.object({
	/** Id of the kind of task: family code and level. */
	kind: v.string(),
	skill: v.string(),
	reason: reasonSchema,
	seconds: v.number(),
	reading: v.number(),
	returned: v.boolean()
});

/** What the plan holds of one task. */
export type Planned = v.InferOutput<typeof plannedSchema>;

const runTaskSchema = v.object({
	number: v.string(),
	/** `shown` tasks are worked examples: read, not answered. */
	standing: v.picklist(['open', 'right', 'helped', 'wrong', 'shown']),
	notes: v.optional(notesSchema),
	planned: v.optional(plannedSchema),
	/** Skills charged by the checks so far. */
	charged: v.optional(v.array(v.string()))
});

export type RunTask = v.InferOutput<typeof runTaskSchema>;

const runSchema = v.object({
	id: v.string(),
	topic: v.picklist(['plan', ...freeTopics]),
	level: v.picklist([1, 2, 3]),
	at: count,
	/** Day and seconds of a run from the plan. */
	day: v.number(),
	budget: v.number(),
	tasks: v.pipe(v.array(runTaskSchema), v.minLength(1), v.maxLength(300))
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
	return { number: numberOf(card, level, below(seedCount)), standing: 'open' };
}

export function numberOf(card: Card, level: Level, seed: number): string {
	return writeTaskNumber({ code: card.code, level, seed, rev: card.rev });
}

/** A run by free choice: ten tasks of a topic, or of all topics taking turns. */
export function newRun(topic: TopicId | 'mixed', level: Level, id: string, below: Below): Run {
	const order = topic === 'mixed' ? mixed(below) : shuffled(cardsOf(topic), below);
	const tasks = Array.from({ length: runLength }, (_, i) =>
		newTask(order[i % order.length] as Card, level, below)
	);
	return { id, topic, level, at: 0, day: 0, budget: 0, tasks };
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
