import * as v from 'valibot';
import { hashOf } from './hash.ts';
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

/** Form of a hand-in; a higher one is of a newer edition. */
export const handInForm = 1;

const key = v.pipe(v.string(), v.regex(/^[A-Za-z]\w{0,39}$/));
const list = v.pipe(v.array(v.pipe(v.string(), v.regex(/^[\w-]{1,60}$/))), v.maxLength(40));

function count(least: number, most: number) {
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
	/** Charts that were looked at. */
	charts: v.optional(list, []),
	/** Seconds that the task was in front of the student. */
	seconds: v.optional(v.nullable(count(0, 1_000_000)), null)
});

const handInSchema = v.strictObject({
	/** The set as the fragment of its link. */
	set: v.pipe(v.string(), v.regex(/^[\w.-]{1,16000}$/)),
	/** Hash of the set. */
	hash: v.pipe(v.string(), v.regex(/^[0-9A-Z]{4}-[0-9A-Z]{4}$/)),
	code: v.pipe(
		v.string(),
		v.maxLength(100),
		v.check((code) => {
			const reading = readCode(code);
			return reading.ok && reading.code === code;
		}, 'code')
	),
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

/** A hand-in with checks that show a later change. */
const sealedSchema = v.object({
	bucktail: v.literal('hand-in'),
	form: count(1, 9999),
	handIn: handInSchema,
	/** Over the whole. */
	check: v.string(),
	/** Over each answer. */
	checks: v.pipe(v.array(v.string()), v.maxLength(mostTasks))
});

export type SealedHandIn = v.InferInput<typeof sealedSchema>;

export type HandInReading =
	| { readonly ok: true; readonly handIn: HandIn }
	| { readonly ok: false; readonly sentence: string };

/** The hand-in as it is written; what says nothing is left out. */
export function seal(handIn: HandIn): SealedHandIn {
	const whole = v.parse(handInSchema, handIn);
	const { answers, ...rest } = whole;
	return {
		bucktail: 'hand-in',
		form: handInForm,
		handIn: {
			...(withoutNothing(rest) as typeof rest),
			answers: answers.map((one) => withoutNothing(one) as typeof one)
		},
		check: checkOf(whole),
		checks: answers.map((one) => answerCheck(whole, one))
	};
}

/** Reads what was sealed; never throws. */
export function readSealed(data: unknown): HandInReading {
	const form = v.safeParse(v.object({ bucktail: v.literal('hand-in'), form: v.number() }), data);
	if (!form.success) return refused('That is no hand-in of Bucktail.');
	if (form.output.form > handInForm) {
		return refused('Update Bucktail first: a newer version made that hand-in.');
	}
	const read = v.safeParse(sealedSchema, data, { abortEarly: true });
	if (!read.success) {
		const isCode = read.issues[0].message === 'code';
		return refused(isCode ? noCode : 'The hand-in is damaged; ask for it to be sent again.');
	}
	const { handIn, check, checks } = read.output;
	if (check === checkOf(handIn)) return { ok: true, handIn };
	const at = handIn.answers.filter((one, i) => answerCheck(handIn, one) !== checks[i]);
	const all = at.length === handIn.answers.length;
	const what =
		all || at.length === 0 ? 'it does' : `task ${at.map(({ place }) => place).join(', ')} does`;
	return refused(`Changed after it was handed in: ${what} not match its check.`);
}

const noCode =
	'The student code in it has characters that no code may have; ask for it to be handed in again.';

function refused(sentence: string): HandInReading {
	return { ok: false, sentence };
}

function checkOf(handIn: HandIn): string {
	return hashOf(JSON.stringify(handIn), 8);
}

function answerCheck({ hash, code, version }: HandIn, answer: HandInAnswer): string {
	return hashOf(JSON.stringify([hash, code, version, answer]), 4);
}

/** Without what the schema puts in by itself. */
function withoutNothing(record: Readonly<Record<string, unknown>>): Record<string, unknown> {
	const plain: Readonly<Record<string, unknown>> = {
		entries: {},
		picked: {},
		units: 'in',
		opened: [],
		charts: [],
		seconds: null,
		name: '',
		version: 1,
		promised: false,
		at: null
	};
	return Object.fromEntries(
		Object.entries(record).filter(
			([name, value]) => JSON.stringify(value) !== JSON.stringify(plain[name])
		)
	);
}

/** Whether two hand-ins say the same. */
export function isSameHandIn(one: HandIn, other: HandIn): boolean {
	return JSON.stringify(one) === JSON.stringify(other);
}
