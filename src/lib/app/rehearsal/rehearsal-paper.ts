import * as v from 'valibot';
import { keptJson } from '../device/kept.ts';
import { keptQuestion } from '$lib/engine/sets/kept-question.ts';

/*
 * What is kept of a rehearsal: its questions by task number and options, so that no later dealing
 * changes them. Time is counted from the moment it began, and runs on while the page is closed.
 */

/** How many questions may be chosen. */
export const countLimits = { least: 10, most: 60, usual: 30 };

/** How much time may be chosen, in minutes. */
export const minuteLimits = { least: 5, most: 240 };

/** Minutes a question gets when nothing else is chosen. */
export const minutesEach = 2;

const whole = v.pipe(v.number(), v.integer(), v.minValue(0));

const common = {
	/** Id of the run in the log, and the seed its questions were dealt from. */
	id: v.pipe(v.string(), v.uuid()),
	count: v.pipe(whole, v.minValue(countLimits.least), v.maxValue(countLimits.most)),
	/** When it began, in milliseconds since 1970-01-01 UTC. */
	start: whole,
	/** Time given, in seconds. */
	length: whole,
	/** Place of the open question. */
	at: whole,
	/** Place of the option chosen, by question. */
	choices: v.array(v.nullable(whole)),
	/** Whether a question is marked for later. */
	later: v.array(v.boolean()),
	/** Seconds each question was open. */
	seconds: v.array(v.pipe(v.number(), v.minValue(0))),
	/** When it was handed in, as `start`; null while it is being worked. */
	end: v.nullable(whole),
	/** Whether its answers are in the log. */
	logged: v.boolean()
};

interface Rows {
	readonly count: number;
	readonly at: number;
	readonly choices: readonly unknown[];
	readonly later: readonly unknown[];
	readonly seconds: readonly unknown[];
	readonly questions?: readonly unknown[];
}

function hasARowEach({ count, at, choices, later, seconds, questions = choices }: Rows): boolean {
	return at < count && [choices, later, seconds, questions].every((row) => row.length === count);
}

const schema = v.pipe(
	v.object({ ...common, questions: v.array(keptQuestion) }),
	v.check((paper) => hasARowEach(paper)),
	v.check(({ questions, choices }) =>
		questions.every(({ options }, i) => (choices[i] ?? 0) < options.length)
	)
);

/** The first edition kept a checksum of its questions, whose families draw other ones now. */
const firstSchema = v.object({ ...common, check: v.string() });

/** A rehearsal as far as it has been answered. */
export type Paper = Readonly<v.InferOutput<typeof schema>>;

/**
 * A paper read back from storage: null when there is none or it cannot be used, `'outdated'` when
 * it does not say what its questions were.
 */
export function readPaper(text: string | null): Paper | 'outdated' | null {
	const value = keptJson(text);
	const read = v.safeParse(schema, value);
	if (read.success) return read.output;
	return v.is(firstSchema, value) ? 'outdated' : null;
}

export function newPaper(parts: Pick<Paper, 'id' | 'questions' | 'start' | 'length'>): Paper {
	const count = parts.questions.length;
	const row = <T>(value: T) => Array.from({ length: count }, () => value);
	const rows = { choices: row(null), later: row(false), seconds: row(0) };
	return { ...parts, ...rows, count, at: 0, end: null, logged: false };
}

/** Seconds left at a moment; a clock that was set back gives no more than the whole time. */
export function secondsLeft({ start, length }: Paper, now: number): number {
	return Math.min(length, Math.max(0, length - (now - start) / 1000));
}

/** The paper handed in, at the end of its time at the latest. */
export function handedIn(paper: Paper, now: number): Paper {
	const due = paper.start + paper.length * 1000;
	return { ...paper, end: Math.max(paper.start, Math.min(now, due)) };
}

/** Seconds from the start until it was handed in. */
export function secondsUsed({ start, end }: Paper): number {
	return end === null ? 0 : (end - start) / 1000;
}

export function answered({ choices }: Paper): number {
	return choices.filter((choice) => choice !== null).length;
}

/** One sentence on what cannot be used, or null when it can. */
export function lengthProblem(count: number | null, minutes: number | null): string | null {
	const { least, most } = countLimits;
	if (!isWithin(count, countLimits)) return `Choose from ${least} to ${most} questions.`;
	if (isWithin(minutes, minuteLimits)) return null;
	return `Choose from ${minuteLimits.least} to ${minuteLimits.most} minutes.`;
}

function isWithin(value: number | null, limits: { least: number; most: number }): boolean {
	if (value === null || !Number.isInteger(value)) return false;
	return value >= limits.least && value <= limits.most;
}
