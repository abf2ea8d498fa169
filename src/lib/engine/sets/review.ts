import type { HandInAnswer } from './hand-in.ts';
import type { SetTask } from './open-set.ts';
import { optionChosen } from './chosen-option.ts';
import { readOne } from './read-entries.ts';

/** An entry that does not say one thing, and why. */
export interface Unclear {
	readonly label: string;
	readonly entry: string;
	readonly why: string;
}

/** How one task stands before it is handed in; nothing in it tells whether an answer is right. */
export interface ReviewRow {
	/** Where it stands on the student's own sheet, from 1. */
	readonly place: number;
	/** How many answers it asks for, and how many are there. */
	readonly asked: number;
	readonly entered: number;
	/** Labels of the answers that are left out. */
	readonly blank: readonly string[];
	/** Entries that nobody can read, or that can be meant in two ways. */
	readonly unclear: readonly Unclear[];
}

/**
 * What is left out and what cannot be read, for a look at it before it is handed in.
 *
 * @param tasks in the order of the student's sheet
 */
export function reviewOf(
	tasks: readonly SetTask[],
	answers: readonly HandInAnswer[]
): Promise<ReviewRow[]> {
	const rows = tasks.map((task, i) => {
		const answer = answers.find(({ place }) => place === i + 1);
		return rowOf(task, i + 1, answer ?? { entries: {}, picked: {}, units: 'in' });
	});
	return Promise.all(rows);
}

async function rowOf(
	{ task, question }: SetTask,
	place: number,
	answer: Pick<HandInAnswer, 'entries' | 'picked' | 'units'>
): Promise<ReviewRow> {
	const keys = question ? [question.key] : task.drawn.asked;
	const labelOf = (key: string) => task.method.steps[key]?.label ?? key;
	const typed = (key: string) => (answer.entries[key] ?? '').trim();
	const filled = keys.filter((key) => typed(key) !== '');
	const unclear: Unclear[] = [];
	for (const key of filled) {
		const why = question
			? optionChosen(question, typed(key)) === null && 'None of the options.'
			: await unclearBy(task, key, typed(key), answer);
		if (why) unclear.push({ label: labelOf(key), entry: typed(key), why });
	}
	const blank = keys.filter((key) => typed(key) === '').map(labelOf);
	return { place, asked: keys.length, entered: filled.length, blank, unclear };
}

async function unclearBy(
	task: SetTask['task'],
	key: string,
	entry: string,
	answer: Pick<HandInAnswer, 'picked' | 'units'>
): Promise<string | null> {
	const { readings, why } = await readOne(task, key, entry, answer);
	return readings.length === 1 ? null : why;
}
