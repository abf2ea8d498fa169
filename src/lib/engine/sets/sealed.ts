import * as v from 'valibot';
import { count, type HandIn, type HandInAnswer, handInSchema } from './hand-in.ts';
import { hashOf } from './hash.ts';
import { mostTasks } from './set.ts';

/** Form of a hand-in; a higher one is of a newer edition. */
export const handInForm = 3;

export const newerHandIn = 'Update Bucktail first: a newer version made that hand-in.';

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
		form: formOf(whole),
		handIn: {
			...(withoutNothing(rest) as typeof rest),
			answers: answers.map((one) => withoutNothing(one) as typeof one)
		},
		check: checkOf(whole),
		checks: answers.map((one) => answerCheck(whole, one))
	};
}

/** The lowest form that has all of it, so that earlier editions read what they can. */
function formOf({ device, answers }: HandIn): number {
	if (answers.some(({ told }) => told !== undefined)) return handInForm;
	return device === undefined ? 1 : 2;
}

/** Reads what was sealed; never throws. */
export function readSealed(data: unknown): HandInReading {
	const form = v.safeParse(v.object({ bucktail: v.literal('hand-in'), form: v.number() }), data);
	if (!form.success) return refused('That is no hand-in of Bucktail.');
	if (form.output.form > handInForm) {
		return refused(newerHandIn);
	}
	const read = v.safeParse(sealedSchema, data, { abortEarly: true });
	if (!read.success) {
		const isCode = read.issues[0].message === 'code';
		return refused(isCode ? noCode : 'The hand-in is damaged; ask for it to be sent again.');
	}
	const { handIn, check, checks } = read.output;
	if (check === checkOf(handIn)) return { ok: true, handIn };
	const at = handIn.answers.filter((one, i) => answerCheck(handIn, one) !== checks[i]);
	const places = at.map(({ place }) => place).join(', ');
	const isWhole = at.length === 0 || at.length === handIn.answers.length;
	if (isWhole) return changed('it does not match its check');
	return changed(
		at.length === 1
			? `task ${places} does not match its check`
			: `tasks ${places} do not match their checks`
	);
}

function changed(what: string): HandInReading {
	return refused(`Changed after it was handed in: ${what}.`);
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
