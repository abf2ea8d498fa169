import * as v from 'valibot';
import { packed, unpacked } from '$lib/exchange/fragment.ts';

/*
 * A question to an instructor as a link: the task's number, and what was done on it. Verdicts are
 * not in it; they are found again from what was typed, so a link cannot claim any.
 */

/** Longest note, in characters. */
export const longestNote = 300;

/** Longest entry; the field takes no longer one. */
export const longestTyped = 200;

/** Most checks in a link; of more, the newest are told. */
export const mostChecks = 8;

/** Links of version 1 say the same, packed otherwise. */
const version = 2;

const key = v.pipe(v.string(), v.regex(/^[A-Za-z]\w{0,39}$/));
const typed = v.pipe(
	v.record(key, v.pipe(v.string(), v.maxLength(longestTyped))),
	v.maxEntries(40)
);
const count = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(99));
const units = v.picklist(['in', 'mm']);

const checkSchema = v.object({
	/** What was typed, by step. */
	typed,
	/** Which reading was picked, by step, where there were two. */
	picked: v.record(key, count),
	/** What a bare length was in. */
	units,
	/** Steps opened before. */
	opened: count,
	/** Whether it was worked step by step. */
	byStep: v.boolean()
});

const questionSchema = v.object({
	/** The task's number. */
	task: v.pipe(v.string(), v.maxLength(30)),
	units,
	opened: count,
	byStep: v.boolean(),
	/** Whether the whole working was shown. */
	worked: v.boolean(),
	/** Checks that there were before those told here. */
	before: count,
	checks: v.pipe(v.array(checkSchema), v.maxLength(mostChecks)),
	/** What stood in the fields and was not checked. */
	open: typed,
	/** Lines of scratch arithmetic; links of earlier versions have none. */
	scratch: v.optional(v.pipe(v.array(v.pipe(v.string(), v.maxLength(80))), v.maxLength(12))),
	note: v.pipe(v.string(), v.maxLength(longestNote))
});

export type AskedCheck = Readonly<v.InferOutput<typeof checkSchema>>;
export type Question = Readonly<v.InferOutput<typeof questionSchema>>;

export type QuestionReading =
	| { readonly ok: true; readonly question: Question }
	| { readonly ok: false; readonly sentence: string };

/** The fragment of the address that shows the question. */
export function writeQuestion(question: Question): Promise<string> {
	return packed(version, question);
}

/** Reads the fragment of an address; never throws. */
export async function readQuestion(fragment: string): Promise<QuestionReading> {
	const reading = await unpacked(version, fragment);
	if (!reading.ok && reading.reason === 'newer') {
		return { ok: false, sentence: 'Update Bucktail first: a newer version made that link.' };
	}
	const read = reading.ok ? v.safeParse(questionSchema, reading.value) : null;
	if (read?.success) return { ok: true, question: read.output };
	return {
		ok: false,
		sentence: 'That link is damaged or cut short; ask for it to be copied and sent again.'
	};
}
