import * as v from 'valibot';

/*
 * What is kept of a rehearsal: from the seed the questions are drawn again, and time is counted
 * from the moment it began, so that it runs on while the page is closed.
 */

/** How many questions may be chosen. */
export const countLimits = { least: 10, most: 60, usual: 30 };

/** How much time may be chosen, in minutes. */
export const minuteLimits = { least: 5, most: 240 };

/** Minutes a question gets when nothing else is chosen. */
export const minutesEach = 2;

const whole = v.pipe(v.number(), v.integer(), v.minValue(0));

const schema = v.pipe(
	v.object({
		/** Seed text of the questions, and id of the run in the log. */
		id: v.pipe(v.string(), v.uuid()),
		count: v.pipe(whole, v.minValue(countLimits.least), v.maxValue(countLimits.most)),
		/** Checksum of the questions as they were first drawn. */
		check: v.string(),
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
	}),
	v.check(({ count, at, ...lists }) => {
		const rows = [lists.choices, lists.later, lists.seconds];
		return at < count && rows.every((row) => row.length === count);
	})
);

/** A rehearsal as far as it has been answered. */
export type Paper = Readonly<v.InferOutput<typeof schema>>;

/** A paper read back from storage, or null when there is none or it cannot be used. */
export function readPaper(text: string | null): Paper | null {
	if (text === null) return null;
	try {
		const read = v.safeParse(schema, JSON.parse(text));
		return read.success ? read.output : null;
	} catch {
		return null;
	}
}

export function newPaper(parts: Pick<Paper, 'id' | 'count' | 'check' | 'start' | 'length'>): Paper {
	const row = <T>(value: T) => Array.from({ length: parts.count }, () => value);
	const rows = { choices: row(null), later: row(false), seconds: row(0) };
	return { ...parts, ...rows, at: 0, end: null, logged: false };
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
