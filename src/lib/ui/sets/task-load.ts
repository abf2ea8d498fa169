import { difficultyOf, featuresOf, secondsFor } from '$lib/engine/tasks/difficulty.ts';
import { textAt } from '$lib/engine/solver/show.ts';
import type { Task } from '$lib/engine/tasks/task.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';

/** What an instructor sees of a task in one line. */
export interface TaskLoad {
	/** The right answers, as the shop writes them; of many the last, with how many there are. */
	readonly answer: string;
	readonly difficulty: number;
	readonly seconds: number;
}

/** More answers than these are a row of numbers that nobody tells apart. */
const mostTogether = 3;

export function loadOf(task: Task, units: LengthUnit): TaskLoad {
	const { method, drawn, right } = task;
	const labelled = (key: string) =>
		`${method.steps[key]?.label ?? key} ${textAt(method, key, right[key] ?? '', units)}`;
	const answers = drawn.asked.map((key) => {
		const text = textAt(method, key, right[key] ?? '', units);
		// A bare number says nothing without what it counts.
		return /^[\d./, -]+$/.test(text) ? labelled(key) : text;
	});
	const last = drawn.asked.at(-1) ?? '';
	const answer =
		answers.length > mostTogether
			? `${labelled(last)}, the last of ${answers.length}`
			: answers.join('; ');
	const difficulty = difficultyOf(featuresOf(task));
	return { answer, difficulty, seconds: secondsFor(difficulty) };
}

/** Whole minutes that tasks take together, about. */
export function minutesOf(loads: readonly Pick<TaskLoad, 'seconds'>[]): number {
	const seconds = loads.reduce((sum, load) => sum + load.seconds, 0);
	return Math.max(1, Math.round(seconds / 60));
}
