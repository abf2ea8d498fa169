import type { Task } from '$lib/engine/tasks/task.ts';
import { TaskWork } from '$lib/ui/sheet/task-work.svelte.ts';
import { settings } from '../device/settings.svelte.ts';
import { notingPart, practice, runOfOne } from './practice.svelte.ts';
import type { RunTask } from './run.ts';

/** Work on a task that is not of the run before it is answered. */
export function workBeside(task: Task): TaskWork {
	return new TaskWork(task, () => settings.units, notingPart);
}

/**
 * Takes the task of such work into the run, as one that was opened by hand.
 *
 * @param since when it was first seen: milliseconds since 1970-01-01 UTC
 */
export function takeIntoRun(work: TaskWork, since: number): void {
	if (practice.work === work) return;
	const { number, family, id } = work.task;
	const { run } = practice;
	const opened: RunTask = { number, standing: 'open' };
	const at = run?.tasks.findIndex((task) => task.number === number) ?? -1;
	if (run && at >= 0) practice.keep({ ...run, at });
	else if (run) {
		practice.keep({ ...run, tasks: run.tasks.toSpliced(run.at + 1, 0, opened), at: run.at + 1 });
	} else practice.keep(runOfOne(family.topic, id.level, opened));
	[practice.work, practice.unopened, practice.since] = [work, null, since];
}
