import { evidenceOf } from '$lib/engine/schedule/evidence.ts';
import { noteVerdicts } from '$lib/engine/schedule/note-verdicts.ts';
import { optionChosen } from '$lib/engine/sets/chosen-option.ts';
import type { HandInAnswer } from '$lib/engine/sets/hand-in.ts';
import type { SetTask } from '$lib/engine/sets/open-set.ts';
import { evidenceIn, verdictOn } from '$lib/engine/sets/rehearsal-marks.ts';
import { givensOf } from '$lib/engine/tasks/givens.ts';
import type { Task } from '$lib/engine/tasks/task.ts';
import { type Check, TaskWork } from '$lib/ui/sheet/task-work.svelte.ts';
import type { AttemptFacts } from '../device/device.svelte.ts';
import { longestSeconds, settledIn } from '../practice/answering.ts';
import { takeUp } from './kept-answers.ts';

/**
 * A check of an answer in a set as an attempt, for the plan of whoever works it.
 *
 * @param before the checks before it, oldest first
 * @param runId stands for the set
 */
export function checkedAttempt(
	{ task, worked }: TaskWork,
	check: Check,
	before: readonly Check[],
	answer: HandInAnswer,
	runId: string
): AttemptFacts {
	const charged = before.flatMap((one) =>
		evidenceOf(task, { ...one, charged: [], settled: [] }).flatMap(({ skill, result }) =>
			result === 'wrong' ? skill : []
		)
	);
	return {
		...about(task, answer, runId),
		typed: { ...check.typed },
		verdicts: noteVerdicts(check.verdicts),
		opened: [...check.opened],
		byStep: check.byStep,
		worked,
		skills: evidenceOf(task, { ...check, charged, settled: settledIn(before) })
	};
}

/** What was handed in for one task as an attempt; null where it is not answered as a whole. */
export async function handedInAttempt(
	{ task, question }: SetTask,
	answer: HandInAnswer,
	runId: string
): Promise<AttemptFacts | null> {
	if (!question) {
		const work = new TaskWork(task, () => answer.units);
		takeUp(work, answer);
		const check = await work.check();
		return check && checkedAttempt(work, check, [], answer, runId);
	}
	const entry = answer.entries[question.key] ?? '';
	const choice = optionChosen(question, entry);
	if (choice === null) return null;
	return {
		...about(task, answer, runId),
		typed: { [question.key]: entry },
		verdicts: noteVerdicts({ [question.key]: verdictOn(question, choice) }),
		opened: [],
		byStep: false,
		worked: false,
		skills: evidenceIn(question, choice)
	};
}

function about(task: Task, { seconds, charts }: HandInAnswer, runId: string) {
	return {
		task: task.number,
		level: task.id.level,
		source: 'practice' as const,
		runId,
		seconds: Math.min(seconds ?? 0, longestSeconds),
		...(charts.length > 0 && { charts: [...charts] }),
		givens: givensOf(task)
	};
}
