import { sayVerdict } from '../marking/say.ts';
import type { Verdict } from '../marking/verdict.ts';
import { stepsOf, type Task } from '../tasks/task.ts';
import type { HandInAnswer } from './hand-in.ts';
import type { SetTask } from './open-set.ts';
import { bestVerdicts, forMarks, type Read, readOne } from './read-entries.ts';
import { optionChosen } from './chosen-option.ts';
import { optionTexts, type Question } from './rehearsal.ts';
import { verdictOn } from './rehearsal-marks.ts';
import { totalOf } from './set.ts';
import { blankSteps, markedOn, type StepState, stepMarks } from './step-marks.ts';

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
	/** How each step came out that the answer speaks for, in order. */
	readonly steps: readonly StepState[];
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
	const judged = { ...forMarks(task, entries, verdicts), ...Object.fromEntries(unread) };
	const rows = stepMarks(task, setTask.marks, judged);
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
	if (verdict.kind === 'holds') return 'holds';
	return verdict.kind === 'rework' ? 'wrong' : 'unread';
}

function markOption({ task, marks }: SetTask, question: Question, entry: string): AnswerMark {
	const { key } = question;
	const group = new Map(stepsOf(task).map((step, i) => [step, marks[i] ?? 0]));
	if (entry.trim() === '') {
		return { key, marks: 0, of: totalOf(marks), steps: blankSteps(group), ...blank };
	}
	const chosen = optionChosen(question, entry);
	const verdict = chosen === null ? null : verdictOn(question, chosen);
	const { marks: had, of, steps } = markedOn(task, key, group, verdict);
	const row = { key, marks: had, of, steps };
	if (chosen === null || verdict === null) {
		return { ...blank, ...row, entry, verdict: 'unread', says: 'None of the options.' };
	}
	const read = optionTexts(question, 'in')[chosen] ?? '';
	return { ...row, entry, read, ...told(task, key, verdict) };
}
