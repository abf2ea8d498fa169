import * as v from 'valibot';
import { keptJson } from '../device/kept.ts';
import { freeTopics, type Run } from './run.ts';

/*
 * Reads a run back from storage, whose bytes are not trusted. Loaded only when there is a run.
 */

const count = v.pipe(v.number(), v.integer(), v.minValue(0));

const notesSchema = v.object({
	typed: v.record(v.string(), v.pipe(v.string(), v.maxLength(300))),
	opened: count,
	byStep: v.boolean(),
	worked: v.boolean(),
	/** Slips that the person has said to have made. */
	told: v.optional(v.array(v.string())),
	charts: v.optional(v.array(v.string())),
	scratch: v.optional(v.array(v.pipe(v.string(), v.maxLength(80)))),
	/** How often what was typed has been checked; the verdict is then shown again. */
	checks: count
});

/** Why the plan chose a task, as the scheduler says it. */
const reasonSchema = v.variant('kind', [
	v.object({ kind: v.literal('missed'), skill: v.string(), day: v.number() }),
	v.object({ kind: v.literal('fading'), skill: v.string(), day: v.number(), recall: v.number() }),
	v.object({ kind: v.literal('new'), skill: v.string() }),
	v.object({ kind: v.literal('sweep'), skill: v.string(), exam: v.number() }),
	v.object({ kind: v.literal('chosen'), skill: v.string() })
]);

const plannedSchema = v.object({
	/** Id of the kind of task: family code and level. */
	kind: v.string(),
	skill: v.string(),
	reason: reasonSchema,
	seconds: v.number(),
	worked: v.boolean(),
	reading: v.number(),
	returned: v.boolean()
});

const runTaskSchema = v.object({
	number: v.string(),
	/** `shown` tasks are worked examples: read, not answered. */
	standing: v.picklist(['open', 'right', 'helped', 'wrong', 'shown']),
	notes: v.optional(notesSchema),
	planned: v.optional(plannedSchema),
	/** Skills charged by the checks so far. */
	charged: v.optional(v.array(v.string()))
});

const runSchema = v.object({
	id: v.string(),
	topic: v.picklist(['plan', ...freeTopics]),
	level: v.picklist([1, 2, 3]),
	at: count,
	/** Day and seconds of a run from the plan. */
	day: v.number(),
	budget: v.number(),
	ends: v.optional(v.boolean()),
	tasks: v.pipe(v.array(runTaskSchema), v.minLength(1), v.maxLength(300))
});

/** A run read back from storage, or null when there is none or it cannot be used. */
export function readRun(text: string | null): Run | null {
	const read = v.safeParse(runSchema, keptJson(text));
	return read.success && read.output.at < read.output.tasks.length ? read.output : null;
}
