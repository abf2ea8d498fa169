import * as v from 'valibot';
import {
	json,
	place,
	setFragment,
	setHash,
	short,
	shortList,
	stamp,
	studentCode
} from './event-fields.ts';

/*
 * What the log keeps of sets: those an instructor made, and those a student was sent and worked.
 * A set is known by its hash; the same set made or taken up twice is one.
 */

const count = v.pipe(v.number(), v.integer(), v.minValue(0));

/** What events about work on a set have in common: which set, and under which code. */
const worked = { ...stamp, hash: setHash, code: studentCode };

const savedSchema = v.object({
	...stamp,
	type: v.literal('set'),
	hash: setHash,
	/** The whole set as plain data, for `readSet`. */
	set: json
});

const shelvedSchema = v.object({
	...stamp,
	type: v.literal('set-shelf'),
	hash: setHash,
	to: v.picklist(['list', 'archive', 'bin'])
});

const drawnSchema = v.object({
	...stamp,
	type: v.literal('set-drawn'),
	hash: setHash,
	/** Whose sheet it is; null where everybody has the same numbers. */
	code: v.nullable(studentCode),
	/** What its tasks drew, packed, or a part of them: see `exchange/kept-sheets.ts`. */
	draws: setFragment
});

const takenSchema = v.object({
	...worked,
	type: v.literal('set-taken'),
	/** The set as the fragment of its link. */
	link: setFragment
});

const answerSchema = v.object({
	...worked,
	type: v.literal('set-answer'),
	/** Where the task stands on the student's own sheet, from 1. */
	place,
	/** What stands in the fields now, by step, as typed. */
	entries: v.pipe(v.record(short, v.pipe(v.string(), v.maxLength(300))), v.maxEntries(60)),
	/** Which reading was picked, by step, where there were two. */
	picked: v.pipe(v.record(short, count), v.maxEntries(60)),
	units: v.picklist(['in', 'mm']),
	opened: shortList,
	/** Answers of which it was told that they were wrong, by step. */
	told: v.optional(shortList),
	charts: shortList,
	/** Seconds that the task has been in front of the student, all in all. */
	seconds: count
});

const handedInSchema = v.object({
	...worked,
	type: v.literal('set-handed-in'),
	/** 1 when first handed in, one more every time again. */
	version: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(9999)),
	/** Only where the student typed one. */
	name: v.pipe(v.string(), v.maxLength(60)),
	/** Whether the student promised to have worked without help. */
	promised: v.boolean()
});

export const setSchemas = {
	set: savedSchema,
	'set-shelf': shelvedSchema,
	'set-drawn': drawnSchema,
	'set-taken': takenSchema,
	'set-answer': answerSchema,
	'set-handed-in': handedInSchema
};

/** A set was made, or made again as it was. */
export type SetSaved = Readonly<v.InferOutput<typeof savedSchema>>;
/** A saved set was put away, removed, or taken back. */
export type SetShelved = Readonly<v.InferOutput<typeof shelvedSchema>>;
/** The tasks of a set were drawn, for everybody or for one code. */
export type SetDrawn = Readonly<v.InferOutput<typeof drawnSchema>>;
/** A student took up a set that was sent, under a code. */
export type SetTaken = Readonly<v.InferOutput<typeof takenSchema>>;
/** What a student has entered in one task of a set so far. */
export type SetAnswer = Readonly<v.InferOutput<typeof answerSchema>>;
/** A student handed in what was entered until then. */
export type SetHandedIn = Readonly<v.InferOutput<typeof handedInSchema>>;

/** An event about sets. */
export type SetEvent = SetSaved | SetShelved | SetDrawn | SetTaken | SetAnswer | SetHandedIn;
