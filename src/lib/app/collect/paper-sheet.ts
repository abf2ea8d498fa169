import type { TaskMark } from '$lib/engine/sets/collect.ts';
import { type HandIn, noAnswer } from '$lib/engine/sets/hand-in.ts';
import { inOwnOrder } from '$lib/engine/sets/own-order.ts';
import type { OpenSet, SetTask } from '$lib/engine/sets/open-set.ts';
import type { TaskSet } from '$lib/engine/sets/set.ts';

/** What is to be typed in for one task, whatever its numbers. */
export interface PaperTask {
	readonly task: string;
	readonly answers: readonly {
		readonly key: string;
		readonly label: string;
		/** What is to be typed where an option is marked; empty where it is a number or words. */
		readonly hint: string;
	}[];
}

/** One line of a sheet of paper, to type in what stands on it. */
export interface PaperLine {
	/** Where the task stands on this student's sheet, from 1. */
	readonly place: number;
	readonly task: string;
	readonly key: string;
	readonly label: string;
	readonly hint: string;
}

/** What sheets of a set have to be typed in from them, in the order of the set. */
export function paperTasks({ set, tasks }: OpenSet): PaperTask[] {
	return tasks.map(({ task, question }) => ({
		task: task.family.name,
		answers: (question ? [question.key] : task.drawn.asked).map((key) => ({
			key,
			label: task.method.steps[key]?.label ?? key,
			hint: hintFor(question, set)
		}))
	}));
}

function hintFor(question: SetTask['question'], { numbers }: TaskSet): string {
	if (!question) return '';
	// Other numbers may have more options or fewer.
	if (numbers === 'own') return 'letter';
	return `letter A to ${String.fromCharCode(64 + question.options.length)}`;
}

/** What is to be typed in from the sheet of one student, from top to bottom. */
export function paperLines(
	set: TaskSet,
	hash: string,
	code: string,
	tasks: readonly PaperTask[]
): PaperLine[] {
	return inOwnOrder(set, hash, code, tasks).flatMap(({ task, answers }, i) =>
		answers.map((one) => ({ place: i + 1, task, ...one }))
	);
}

/** What stands on a sheet that was marked, for it to be corrected: by place on it and key. */
export function entriesOn(
	set: TaskSet,
	hash: string,
	code: string,
	tasks: readonly Pick<TaskMark, 'answers'>[]
): Record<string, string> {
	const rows = inOwnOrder(set, hash, code, tasks).flatMap(({ answers }, i) =>
		answers.map(({ key, entry }) => [`${i + 1} ${key}`, entry] as const)
	);
	return Object.fromEntries(rows.filter(([, entry]) => entry !== ''));
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
