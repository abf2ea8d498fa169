import * as v from 'valibot';
import { type CollectEvent, collectSchemas } from './collect-events.ts';
import { isJson, json, maxEventLength, short, shortList, stamp } from './event-fields.ts';
import type { Evidence } from './memory.ts';
import { currentSkill, currentSlip } from './old-skills.ts';
import { type PanelEvent, panelSchemas } from './panel-events.ts';
import { type SetEvent, setSchemas } from './set-events.ts';
import { type TimePlanEvent, timePlanSchemas } from './time-plan-events.ts';

export { type Json, maxEventLength } from './event-fields.ts';

/** Longest entry kept as typed, in characters. */
export const maxTyped = 300;
/** Longest time kept for one attempt, in seconds: a day. */
export const maxSeconds = 86_400;

const evidence: readonly Evidence[] = ['right', 'helped', 'wrong'];

const verdictSchema = v.variant('kind', [
	v.object({ kind: v.literal('accept'), carried: v.boolean() }),
	v.object({ kind: v.literal('rework'), cause: short, slips: shortList })
]);

const skillSchema = v.object({
	/** `method/step` */
	skill: v.pipe(v.string(), v.maxLength(120), v.regex(/^[\w-]+\/[\w-]+$/)),
	result: v.picklist(evidence),
	slip: v.optional(short)
});

const toldSchema = v.object({ skill: skillSchema.entries.skill, slip: short });

const attemptSchema = v.object({
	...stamp,
	type: v.literal('attempt'),
	/** The task's number. */
	task: short,
	level: v.optional(v.picklist([1, 2, 3])),
	runId: short,
	source: v.picklist(['practice', 'plan', 'rehearsal', 'lab']),
	/** What was typed, by step. */
	typed: v.pipe(v.record(short, v.pipe(v.string(), v.maxLength(maxTyped))), v.maxEntries(60)),
	verdicts: v.pipe(v.record(short, verdictSchema), v.maxEntries(60)),
	/** Steps opened before. */
	opened: shortList,
	/** Whether it was worked step by step. */
	byStep: v.boolean(),
	/** Whether the steps were laid out for who met them first, and not asked for. */
	guided: v.optional(v.boolean()),
	/** Whether it is a right step on the way, which does not finish the task. */
	part: v.optional(v.boolean()),
	/** Whether the working had been shown. */
	worked: v.boolean(),
	seconds: v.pipe(v.number(), v.minValue(0), v.maxValue(maxSeconds)),
	skills: v.pipe(v.array(skillSchema), v.maxLength(60)),
	/** Slips that the learner has said to have made at the check before, where several fitted. */
	told: v.optional(v.pipe(v.array(toldSchema), v.maxLength(20))),
	/** Charts that were looked at before; it costs nothing. */
	charts: v.optional(shortList),
	/** The drawn numbers as one short text: equal only for the same numbers. */
	givens: v.pipe(v.string(), v.maxLength(300))
});

/** Longest list of readings kept as typed, in characters. */
export const maxReadings = 4_000;

const labCheckSchema = v.object({
	...stamp,
	type: v.literal('lab-check'),
	/** Id of the method. */
	method: short,
	/** What the student calls the part; may be empty. */
	part: v.pipe(v.string(), v.maxLength(60)),
	/** Id of the instrument; null where the readings were taken as exact. */
	tool: v.nullable(short),
	/** What a bare length was in. */
	units: v.picklist(['in', 'mm']),
	/** Givens and readings as typed, by key. */
	values: v.pipe(v.record(short, v.pipe(v.string(), v.maxLength(maxReadings))), v.maxEntries(20)),
	/** Own results as typed, by step. */
	own: v.pipe(v.record(short, v.pipe(v.string(), v.maxLength(maxTyped))), v.maxEntries(20)),
	verdict: v.picklist(['holds', 'fails', 'undecided']),
	skills: v.pipe(v.array(skillSchema), v.maxLength(60))
});

const settingSchema = v.object({
	...stamp,
	type: v.literal('setting'),
	/** What was set, for example `exam` or `minutes`. */
	key: short,
	value: json
});

const namingSchema = v.object({
	...stamp,
	type: v.literal('learner'),
	nickname: v.pipe(v.string(), v.minLength(1), v.maxLength(60))
});

const knownSchemas = {
	attempt: attemptSchema,
	'lab-check': labCheckSchema,
	setting: settingSchema,
	learner: namingSchema,
	...setSchemas,
	...panelSchemas,
	...timePlanSchemas,
	...collectSchemas
};
const anySchema = v.looseObject({ ...stamp, type: short });

/** One check of an answer, or the working asked for. */
export type Attempt = Readonly<v.InferOutput<typeof attemptSchema>>;
/** A part of the learner's own, measured and checked. */
export type LabCheck = Readonly<v.InferOutput<typeof labCheckSchema>>;
/** A choice that the plan or the practice rests on. */
export type SettingChange = Readonly<v.InferOutput<typeof settingSchema>>;
/** A learner was added or renamed. */
export type Naming = Readonly<v.InferOutput<typeof namingSchema>>;

/** An event this version can read. */
export type KnownEvent =
	| Attempt
	| LabCheck
	| SettingChange
	| Naming
	| SetEvent
	| CollectEvent
	| PanelEvent
	| TimePlanEvent;
/** An event of the log; one of a type added later is kept and merged, but no fold sees it. */
export type LogEvent = Readonly<v.InferOutput<typeof anySchema>>;

export type EventReading =
	| { readonly ok: true; readonly event: LogEvent }
	| { readonly ok: false; readonly reason: 'broken' | 'newer' };

/** Reads an event that comes from outside: a file, another device, a caller. */
export function readEvent(raw: unknown): EventReading {
	if (!isJson(raw) || JSON.stringify(raw).length > maxEventLength) return broken;
	if (!v.is(anySchema, raw)) return isNewer(raw) ? { ok: false, reason: 'newer' } : broken;
	return isKnownType(raw.type) && !knownEvent(raw) ? broken : { ok: true, event: raw };
}

const broken = { ok: false, reason: 'broken' } as const;
const newerSchema = v.looseObject({ v: v.pipe(v.number(), v.integer(), v.minValue(2)) });

function isNewer(raw: unknown): boolean {
	return v.is(newerSchema, raw);
}

/** The event with its type told, or undefined when this version cannot read it. */
export function knownEvent(event: unknown): KnownEvent | undefined {
	if (!v.is(typedSchema, event) || !isKnownType(event.type)) return undefined;
	const schema: v.GenericSchema<KnownEvent> = knownSchemas[event.type];
	if (!v.is(schema, event)) return undefined;
	if (event.type === 'attempt') return withCurrentSkills(event);
	return event.type === 'lab-check' ? { ...event, skills: currentSkills(event.skills) } : event;
}

/** What an attempt shows, under the ids that skills and slips go by now. */
function withCurrentSkills(event: Attempt): Attempt {
	const skills = currentSkills(event.skills);
	const told = event.told?.map(({ skill, slip }) => ({
		skill: currentSkill(skill),
		slip: currentSlip(skill, slip)
	}));
	return { ...event, skills, ...(told && { told }) };
}

function currentSkills(skills: Attempt['skills']): Attempt['skills'] {
	return skills.map(({ skill, result, slip }) => ({
		skill: currentSkill(skill),
		result,
		...(slip === undefined ? {} : { slip: currentSlip(skill, slip) })
	}));
}

const typedSchema = v.looseObject({ type: v.string() });

function isKnownType(type: string): type is keyof typeof knownSchemas {
	return Object.hasOwn(knownSchemas, type);
}

/** The order of the log: by time, and by id where two have the same time. */
export function compareEvents(a: Place, b: Place): number {
	return a.at - b.at || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
}

/** Where an event stands in the log. */
export type Place = Pick<LogEvent, 'at' | 'id'>;
