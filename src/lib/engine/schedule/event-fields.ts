import * as v from 'valibot';

/** Longest event, in characters of its JSON. */
export const maxEventLength = 20_000;

/** What events of every type are made of. */
export const short = v.pipe(v.string(), v.minLength(1), v.maxLength(60));
export const shortList = v.pipe(v.array(short), v.maxLength(60));
export const uuid = v.pipe(v.string(), v.uuid());

/** Hash of a set: `9F3A-C41E`. */
export const setHash = v.pipe(v.string(), v.regex(/^[0-9A-Z]{4}-[0-9A-Z]{4}$/));
/** A set as the fragment of its link. */
export const setFragment = v.pipe(v.string(), v.regex(/^[\w.-]{1,16000}$/));
export const studentCode = v.pipe(v.string(), v.minLength(1), v.maxLength(100));
/** Where a task stands in a set, from 1. */
export const place = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(999));

export const stamp = {
	id: uuid,
	/** Raised when a known type changes so that an older reader would misread it. */
	v: v.literal(1),
	/** The learner's id. */
	learner: uuid,
	/** Milliseconds since 1970-01-01 UTC. */
	at: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(8.64e15)),
	/** The day where the learner was, as YYYY-MM-DD. */
	day: v.pipe(v.string(), v.isoDate())
};

/** Anything that can be written as JSON. */
export type Json =
	| null
	| boolean
	| number
	| string
	| readonly Json[]
	| { readonly [key: string]: Json };

export const json = v.custom<Json>((value) => isJson(value));

// Deeper nesting than any event needs is refused, so that no file can exhaust the stack.
export function isJson(value: unknown, depth = 8): value is Json {
	if (typeof value === 'number') return Number.isFinite(value);
	if (value === null || typeof value === 'string' || typeof value === 'boolean') return true;
	if (typeof value !== 'object' || depth === 0) return false;
	const plain = Array.isArray(value) || Object.getPrototypeOf(value) === Object.prototype;
	return plain && Object.values(value).every((part) => isJson(part, depth - 1));
}
