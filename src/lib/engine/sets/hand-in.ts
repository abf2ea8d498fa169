import * as v from 'valibot';
import { setFragment, setHash } from '../schedule/event-fields.ts';
import { mostTasks } from './set.ts';
import { readCode } from './student-code.ts';

/*
 * What a student hands in: every entry as typed, and how it was come to. No verdict is in it; it
 * is marked from the numbers of its set, which it holds as a link.
 */

/** Longest entry; the field takes no longer one. */
export const longestEntry = 200;

/** Longest name, where a student types one. */
export const longestName = 60;

const key = v.pipe(v.string(), v.regex(/^[A-Za-z]\w{0,39}$/));
const list = v.pipe(v.array(v.pipe(v.string(), v.regex(/^[\w-]{1,60}$/))), v.maxLength(40));

/** A whole number. */
export function count(least: number, most: number) {
	return v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));
}

const answer = v.strictObject({
	/** Where the task stands on the student's own sheet, from 1. */
	place: count(1, mostTasks),
	/** What was typed, by step; a chosen option with its letter: `B: 3/8 in`. */
	entries: v.optional(
		v.pipe(v.record(key, v.pipe(v.string(), v.maxLength(longestEntry))), v.maxEntries(40)),
		{}
	),
	/** Which reading was picked, by step, where there were two. */
	picked: v.optional(v.pipe(v.record(key, count(0, 9)), v.maxEntries(40)), {}),
	/** What a bare length was in. */
	units: v.optional(v.picklist(['in', 'mm']), 'in'),
	/** Steps whose working was opened. */
	opened: v.optional(list, []),
	/** Answers of which it was told that they were wrong, by step; left out where there is none. */
	told: v.optional(list),
	/** Charts that were looked at. */
	charts: v.optional(list, []),
	/** Seconds that the task was in front of the student. */
	seconds: v.optional(v.nullable(count(0, 1_000_000)), null)
});

/** What is left out says nothing. */
export const handInSchema = v.strictObject({
	/** The set as the fragment of its link. */
	set: setFragment,
	/** Hash of the set. */
	hash: setHash,
	code: v.pipe(
		v.string(),
		v.maxLength(100),
		v.check((code) => {
			const reading = readCode(code);
			return reading.ok && reading.code === code;
		}, 'code')
	),
	/**
	 * Ten digits that stand for the learner whose log it was worked in, so that two students under
	 * one code are told apart; left out by scripts and for paper.
	 */
	device: v.optional(v.pipe(v.string(), v.regex(/^[0-9A-Z]{10}$/))),
	/** Only where the student typed one. */
	name: v.optional(v.pipe(v.string(), v.maxLength(longestName)), ''),
	/** 1 when first handed in, one more every time again. */
	version: v.optional(count(1, 9999), 1),
	/** Whether the student promised to have worked without help. */
	promised: v.optional(v.boolean(), false),
	/** When it was handed in: date and time, or null where nobody knows. */
	at: v.optional(v.nullable(v.pipe(v.string(), v.isoTimestamp())), null),
	answers: v.pipe(
		v.array(answer),
		v.maxLength(mostTasks),
		v.check((all) => new Set(all.map(({ place }) => place)).size === all.length)
	)
});

export type HandIn = Readonly<v.InferOutput<typeof handInSchema>>;
export type HandInAnswer = HandIn['answers'][number];

/** An answer to which nothing has been entered. */
export function noAnswer(place: number, units: HandInAnswer['units'] = 'in'): HandInAnswer {
	return { place, entries: {}, picked: {}, units, opened: [], charts: [], seconds: null };
}

/** Whether two hand-ins say the same. */
export function isSameHandIn(one: HandIn, other: HandIn): boolean {
	return JSON.stringify(one) === JSON.stringify(other);
}
