import * as v from 'valibot';
import { place, setHash, stamp, studentCode } from './event-fields.ts';

/*
 * What the log keeps of hand-ins that an instructor collected. A hand-in is kept as the text that
 * is pasted into a message, with its own checks; it is marked again whenever it is looked at.
 */

const of = { ...stamp, hash: setHash };

/** Longest hand-in that the log takes, in characters of its text. */
export const longestHandIn = 19_000;

/** Longest name of a file that is kept, in characters. */
export const longestFileName = 200;

const collectedSchema = v.object({
	...of,
	type: v.literal('collected'),
	/** How it came: in a file, pasted, or typed in from paper. */
	by: v.picklist(['file', 'text', 'paper']),
	/** What it came in: the name of a file, or words that tell. */
	file: v.pipe(v.string(), v.maxLength(longestFileName)),
	text: v.pipe(v.string(), v.maxLength(longestHandIn))
});

const markSchema = v.object({
	...of,
	type: v.literal('collected-mark'),
	code: studentCode,
	/** Place of the task in the set, from 1. */
	task: place,
	marks: v.pipe(v.number(), v.minValue(0), v.maxValue(1000)),
	/** Why. */
	note: v.pipe(v.string(), v.minLength(1), v.maxLength(400))
});

const choiceSchema = v.object({
	...of,
	type: v.literal('collected-choice'),
	code: studentCode,
	/** Ten digits, see `ownerOf` in `sets/choose-hand-ins.ts`. */
	owner: v.pipe(v.string(), v.regex(/^[0-9A-Z]{10}$/))
});

/** Longest sentence and longest beginning that are kept of what could not be read, in characters. */
export const longestAside = { why: 400, inside: 1000 };

const asideSchema = v.object({
	...of,
	type: v.literal('collected-aside'),
	file: collectedSchema.entries.file,
	/** Why it was not marked. */
	why: v.pipe(v.string(), v.maxLength(longestAside.why)),
	/** What it begins with, where that is text. */
	inside: v.optional(v.pipe(v.string(), v.maxLength(longestAside.inside))),
	/** False where it was taken off the list; the last event for a file and reason holds. */
	stays: v.boolean()
});

export const collectSchemas = {
	collected: collectedSchema,
	'collected-mark': markSchema,
	'collected-choice': choiceSchema,
	'collected-aside': asideSchema
};

/** A hand-in was taken in. */
export type HandInCollected = Readonly<v.InferOutput<typeof collectedSchema>>;
/** An instructor changed the marks of a task. */
export type MarkChanged = Readonly<v.InferOutput<typeof markSchema>>;
/** An instructor chose the hand-in of a code to be marked. */
export type HandInChosen = Readonly<v.InferOutput<typeof choiceSchema>>;
/** What could not be read was set aside, or taken off the list again. */
export type SetAsideNoted = Readonly<v.InferOutput<typeof asideSchema>>;
/** An event about collecting. */
export type CollectEvent = HandInCollected | MarkChanged | HandInChosen | SetAsideNoted;

export function isCollectEvent(type: string): boolean {
	return Object.hasOwn(collectSchemas, type);
}
