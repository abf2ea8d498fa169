import type { AnswerLine } from './answer-line.svelte.ts';
import type { TaskWork } from './task-work.svelte.ts';

/*
 * From a whole task to its steps and back. Loaded with what shows the steps.
 */

/**
 * Goes on step by step. What was right stays right.
 *
 * @param from the step to begin at: those before it are shown
 */
export function stepByStep(work: TaskWork, from?: string): void {
	carry(work, work.answerLines, work.stepLines);
	if (from !== undefined) work.opened = Math.max(work.opened, work.stepKeys.indexOf(from));
	work.byStep = true;
}

/** Goes back to the whole task, with the steps that were found. */
export function whole(work: TaskWork): void {
	carry(work, work.stepLines, work.answerLines);
	work.byStep = false;
}

/** Takes entries that were right along to the lines of the same steps. */
function carry(work: TaskWork, from: readonly AnswerLine[], to: readonly AnswerLine[]): void {
	const kept = from.filter((line) => work.verdictOn(line)?.kind === 'accept');
	for (const line of to) {
		const same = kept.find(({ key }) => key === line.key);
		if (same) line.type(same.text);
	}
}
