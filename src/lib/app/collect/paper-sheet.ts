import { type HandIn, noAnswer } from '$lib/engine/sets/hand-in.ts';
import { optionTexts } from '$lib/engine/sets/rehearsal.ts';
import type { OpenSet, SetTask } from '$lib/engine/sets/open-set.ts';

/** One line of a sheet of paper, to type in what stands on it. */
export interface PaperLine {
	/** Where the task stands on this student's sheet, from 1. */
	readonly place: number;
	readonly task: string;
	readonly key: string;
	readonly label: string;
	/** The options where one is marked, else null. */
	readonly options: readonly string[] | null;
}

export interface PaperSheet {
	readonly code: string;
	readonly lines: readonly PaperLine[];
}

/** What is to be typed in from the sheet of a student, from top to bottom. */
export function paperSheet(open: OpenSet, code: string): PaperSheet {
	return { code, lines: open.for(code).flatMap((own, i) => linesOf(own, i + 1)) };
}

function linesOf({ task, question }: SetTask, place: number): PaperLine[] {
	const keys = question ? [question.key] : task.drawn.asked;
	return keys.map((key) => ({
		place,
		task: task.family.name,
		key,
		label: task.method.steps[key]?.label ?? key,
		options: question ? optionTexts(question, 'in') : null
	}));
}

/** The answers of a sheet: what was left empty is left out. */
export function answersIn(
	lines: readonly PaperLine[],
	entries: Readonly<Record<string, string>>
): HandIn['answers'] {
	const byPlace = new Map<number, Record<string, string>>();
	for (const { place, key } of lines) {
		const text = (entries[`${place} ${key}`] ?? '').trim();
		if (text !== '') byPlace.set(place, { ...byPlace.get(place), [key]: text });
	}
	return [...byPlace].map(([place, typed]) => ({ ...noAnswer(place), entries: typed }));
}
