import { readWorked } from '../marking/entries.ts';
import { entryOf } from '../marking/answer.ts';
import { mark } from '../marking/mark.ts';
import type { Entry, Verdict, Verdicts } from '../marking/verdict.ts';
import { kindAt } from '../solver/kind-at.ts';
import { stepsOf, type Task } from '../tasks/task.ts';
import type { HandInAnswer } from './hand-in.ts';

/** Every way to understand an entry; where there is none, why. */
export interface Read {
	readonly readings: readonly { readonly entry: Entry; readonly said: string }[];
	readonly why: string;
}

/** Reads an entry as typed; never rejects. */
export async function readOne(
	task: Task,
	key: string,
	text: string,
	{ units, picked }: Pick<HandInAnswer, 'picked' | 'units'>
): Promise<Read> {
	const reading = await readWorked(task.method, key, text, units);
	if (reading.state === 'which') {
		const own = picked[key];
		const options = reading.options.filter((_, i) => own === undefined || i === own);
		const readings = options.map(({ value, grain, said }) => ({ entry: { value, grain }, said }));
		return { readings, why: reading.question };
	}
	const entry = entryOf(reading);
	if (entry && reading.state === 'read')
		return { readings: [{ entry, said: reading.said }], why: '' };
	return { readings: [], why: reading.state === 'unread' ? reading.why : 'It cannot be read.' };
}

/** The verdicts; an entry that can be understood in two ways is taken in the student's favour. */
export function bestVerdicts(task: Task, read: ReadonlyMap<string, Read>) {
	const entries: Record<string, Entry> = {};
	for (const key of stepsOf(task)) {
		const readings = read.get(key)?.readings ?? [];
		const [first] = readings;
		if (!first) continue;
		const isRight = ({ entry }: { entry: Entry }) =>
			mark(task, { ...entries, [key]: entry })[key]?.kind === 'accept';
		const right = readings.length > 1 ? readings.find(isRight) : first;
		entries[key] = (right ?? first).entry;
	}
	return { entries, verdicts: mark(task, entries) };
}

/**
 * The verdicts that marks are taken by: where more slips lead to a number than anybody is asked to
 * choose among, it was one of them all the same.
 */
export function forMarks(task: Task, entries: Readonly<Record<string, Entry>>, verdicts: Verdicts) {
	const fitting = (key: string) => {
		const [kind, entry] = [kindAt(task.method, key), entries[key]];
		return [...task.slips].flatMap(([slip, { [key]: value }]) =>
			entry && value !== undefined && kind.isWritten(entry, value) ? slip : []
		);
	};
	return Object.fromEntries(
		Object.entries(verdicts).map(([key, verdict]): [string, Verdict] => {
			if (verdict.kind !== 'rework' || verdict.cause.kind !== 'unknown') return [key, verdict];
			const slips = fitting(key);
			return [
				key,
				slips.length > 0 ? { kind: 'rework', cause: { kind: 'either', slips } } : verdict
			];
		})
	);
}
