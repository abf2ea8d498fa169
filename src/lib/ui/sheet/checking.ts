import { mark, stepOf } from '$lib/engine/marking/mark.ts';
import type { Entry, Verdict } from '$lib/engine/marking/verdict.ts';
import type { Task } from '$lib/engine/tasks/task.ts';
import type { AnswerLine } from './answer-line.svelte.ts';
import type { Check, TaskWork } from './task-work.svelte.ts';

export { mark };

/*
 * What a check comes to: loaded before the first answer is marked.
 */

/** Marks what stands in some lines of the work on a task. */
export function checkOf(work: TaskWork, lines: readonly AnswerLine[]): Check {
	const entries: Record<string, Entry> = {};
	for (const line of lines) if (line.entry) entries[line.key] = line.entry;
	const opened = work.stepKeys.slice(0, work.opened);
	const earlier = work.checks.map((check) => check.entries);
	const verdicts = mark(work.task, entries, { earlier, opened, told: work.told });
	const all = Object.values(verdicts);
	const whole = work.lines.every(
		(line) => lines.includes(line) || (work.byStep && opened.includes(line.key))
	);
	const hold = all.every((verdict) => verdict.kind === 'holds' || isRight(verdict));
	return {
		typed: Object.fromEntries(lines.map((line) => [line.key, line.text])),
		entries,
		verdicts,
		accepted: whole && all.every(isRight),
		holds: whole && hold,
		opened,
		byStep: work.byStep
	};
}

/** The step that a check names as the one to look at, where it can be told. */
export function stepToLookAt(task: Task, { verdicts }: Check): string | null {
	const wrong = Object.entries(verdicts).flatMap(([key, verdict]) =>
		verdict.kind === 'rework' ? (stepOf(task, verdict.cause, key) ?? []) : []
	);
	return wrong[0] ?? null;
}

function isRight(verdict: Verdict): boolean {
	return verdict.kind === 'accept' && !verdict.carried;
}
