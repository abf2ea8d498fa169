import { evidenceOf, type SkillEvidence } from '$lib/engine/schedule/evidence.ts';
import { noteVerdicts } from '$lib/engine/schedule/note-verdicts.ts';
import { givensOf } from '$lib/engine/tasks/givens.ts';
import { stepsOf } from '$lib/engine/tasks/task.ts';
import type { LastSteps, StepsCheck } from '$lib/ui/lessons/last-steps.svelte.ts';
import type { AttemptFacts } from '../device/device.svelte.ts';
import { longestSeconds, settledIn } from '../practice/answering.ts';

/**
 * What a check in a lesson shows: a right step counts as helped, for its formula stands on the page,
 * and a wrong one as wrong. Only the steps that were left to the reader are spoken of.
 *
 * @param charged skills charged by earlier checks of the same numbers
 */
export function lessonEvidence(
	{ task, checks }: Pick<LastSteps, 'task' | 'checks'>,
	{ verdicts }: Pick<StepsCheck, 'verdicts'>,
	charged: readonly string[]
): SkillEvidence[] {
	const settled = settledIn(checks.slice(0, -1));
	return evidenceOf(task, { verdicts, opened: stepsOf(task), byStep: true, charged, settled });
}

/** The attempt as the log keeps it. */
export function lessonAttempt(
	work: LastSteps,
	{ typed, verdicts }: Pick<StepsCheck, 'typed' | 'verdicts'>,
	{ runId, seconds, skills }: { runId: string; seconds: number; skills: SkillEvidence[] }
): AttemptFacts {
	const { task, given, worked } = work;
	return {
		task: task.number,
		level: task.id.level,
		runId,
		source: 'practice',
		typed: { ...typed },
		verdicts: noteVerdicts(verdicts),
		opened: [...given],
		byStep: true,
		worked,
		seconds: Math.min(seconds, longestSeconds),
		skills,
		givens: givensOf(task)
	};
}
