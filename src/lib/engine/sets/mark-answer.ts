import { entryOf, readAnswer, workArithmetic } from '../marking/answer.ts';
import { mark } from '../marking/mark.ts';
import { sayVerdict } from '../marking/say.ts';
import type { Entry, Verdict, Verdicts } from '../marking/verdict.ts';
import { stepsOf, type Task } from '../tasks/task.ts';
import type { HandInAnswer } from './hand-in.ts';
import type { SetTask } from './open-set.ts';
import { optionTexts, type Question } from './rehearsal.ts';
import { verdictOn } from './rehearsal-marks.ts';
import { totalOf } from './set.ts';
import { markedOn, stepMarks } from './step-marks.ts';

/** One entry marked, or one answer that was left out. */
export interface AnswerMark {
	/** The step. */
	readonly key: string;
	/** As typed; empty where it was left out. */
	readonly entry: string;
	/** How it was understood; empty where it was not. */
	readonly read: string;
	readonly marks: number;
	readonly of: number;
	/** `carried`: right for the student's own number or slip before it. */
	readonly verdict: 'right' | 'carried' | 'holds' | 'wrong' | 'unread' | 'blank';
	/** Ids of the slips that explain it. */
	readonly slips: readonly string[];
	/** Whether the slips are certain, or one of them it was. */
	readonly either: boolean;
	/** One sentence. */
	readonly says: string;
}

/** What was entered in one task of a set, marked from its numbers. */
export async function markAnswer(
	setTask: SetTask,
	answer: Pick<HandInAnswer, 'entries' | 'picked' | 'units'>
): Promise<AnswerMark[]> {
	const { task, question } = setTask;
	const typed = Object.entries(answer.entries).filter(([, text]) => text.trim() !== '');
	if (question) return [markOption(setTask, question, answer.entries[question.key] ?? '')];
	const read = new Map<string, Read>();
	for (const [key, text] of typed) read.set(key, await readOne(task, key, text, answer));
	const { entries, verdicts } = bestVerdicts(task, read);
	const unread = typed.filter(([key]) => !entries[key]).map(([key]) => [key, null] as const);
	const rows = stepMarks(task, setTask.marks, { ...verdicts, ...Object.fromEntries(unread) });
	return rows.map(({ follows, ...row }) => {
		const verdict = verdicts[row.key];
		const one = read.get(row.key);
		if (!one) return { ...row, ...blank };
		const entry = answer.entries[row.key] ?? '';
		const said = one.readings.find((reading) => reading.entry === entries[row.key])?.said ?? '';
		if (!verdict) return { ...row, ...blank, entry, verdict: 'unread', says: one.why };
		const tells = follows ? following : told(task, row.key, verdict);
		return { ...row, entry, read: said, ...tells };
	});
}

const blank = {
	entry: '',
	read: '',
	verdict: 'blank',
	slips: [],
	either: false,
	says: 'Left blank.'
} as const;

const following = {
	verdict: 'carried',
	slips: [],
	either: false,
	says: 'Follows from the slip before it, which is charged once.'
} as const;

function told(task: Task, key: string, verdict: Verdict) {
	const cause = verdict.kind === 'rework' ? verdict.cause : null;
	return {
		verdict: nameOf(verdict),
		slips: cause && 'slips' in cause ? cause.slips : [],
		either: cause?.kind === 'either',
		says: sayVerdict(task, verdict, key)
	};
}

function nameOf(verdict: Verdict): AnswerMark['verdict'] {
	if (verdict.kind === 'accept') return verdict.carried ? 'carried' : 'right';
	return verdict.kind === 'holds' ? 'holds' : 'wrong';
}

/** Every way to understand an entry; where there is none, why. */
interface Read {
	readonly readings: readonly { readonly entry: Entry; readonly said: string }[];
	readonly why: string;
}

async function readOne(
	task: Task,
	key: string,
	text: string,
	{ units, picked }: Pick<HandInAnswer, 'picked' | 'units'>
): Promise<Read> {
	const { method } = task;
	const first = readAnswer(method, key, text, units);
	const reading =
		first.state === 'arithmetic' ? await workArithmetic(method, key, text, units) : first;
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
function bestVerdicts(task: Task, read: ReadonlyMap<string, Read>) {
	const entries: Record<string, Entry> = {};
	for (const key of stepsOf(task)) {
		const readings = read.get(key)?.readings ?? [];
		const [first] = readings;
		if (!first) continue;
		const right = readings.find(({ entry }) => {
			const verdict = mark(task, { ...entries, [key]: entry })[key];
			return readings.length > 1 && verdict?.kind === 'accept';
		});
		entries[key] = (right ?? first).entry;
	}
	return { entries, verdicts: settled(mark(task, entries)) };
}

/** One of two slips is the one that another answer of the task makes certain. */
function settled(verdicts: Verdicts): Verdicts {
	const causes = Object.values(verdicts).flatMap((one) => (one.kind === 'rework' ? one.cause : []));
	const certain = causes.flatMap((cause) => (cause.kind === 'slip' ? cause.slips : []));
	return Object.fromEntries(
		Object.entries(verdicts).map(([key, verdict]) => {
			if (verdict.kind !== 'rework' || verdict.cause.kind !== 'either') return [key, verdict];
			const slips = verdict.cause.slips.filter((slip) => certain.includes(slip));
			return [
				key,
				slips.length === 1 ? { kind: 'rework', cause: { kind: 'slip', slips } } : verdict
			];
		})
	);
}

/** The chosen option: its letter, or its letter and text; null where it is none of them. */
export function optionChosen(question: Question, entry: string): number | null {
	const [, letter = '', text] = /^\s*([A-Za-z])\s*(?::\s*(.*\S))?\s*$/.exec(entry) ?? [];
	const written = letter === '' ? entry.trim() : text;
	const place =
		written === undefined
			? letter.toUpperCase().charCodeAt(0) - firstLetter
			: Math.max(...(['in', 'mm'] as const).map((u) => optionTexts(question, u).indexOf(written)));
	return question.options[place] ? place : null;
}

const firstLetter = 'A'.charCodeAt(0);

/** An option as it is handed in: `B: 3/8 in`. */
export function optionEntry(question: Question, place: number): string {
	return `${String.fromCharCode(firstLetter + place)}: ${optionTexts(question, 'in')[place] ?? ''}`;
}

function markOption({ task, marks }: SetTask, question: Question, entry: string): AnswerMark {
	const { key } = question;
	const of = totalOf(marks);
	if (entry.trim() === '') return { key, marks: 0, of, ...blank };
	const chosen = optionChosen(question, entry);
	if (chosen === null) {
		return { ...blank, key, marks: 0, of, entry, verdict: 'unread', says: 'None of the options.' };
	}
	const verdict = verdictOn(question, chosen);
	const steps = stepsOf(task);
	const group = new Map(steps.map((step, i) => [step, marks[i] ?? 0]));
	const read = optionTexts(question, 'in')[chosen] ?? '';
	const { marks: had } = markedOn(task, key, group, verdict);
	return { key, marks: had, of, entry, read, ...told(task, key, verdict) };
}
