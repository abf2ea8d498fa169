import { loadToDraw } from '$lib/engine/families/catalogue.ts';
import { tell } from '$lib/engine/families/tell.ts';
import { taskFromNumber } from '$lib/engine/tasks/task.ts';
import { whenIdle } from '$lib/ui/late.ts';
import { figureAhead } from '$lib/ui/sheet/figure.ts';
import { settings } from '../device/settings.svelte.ts';
import { oneMore } from './free-run.ts';
import type { Practice } from './practice.svelte.ts';
import type { RunTask } from './run.ts';

/*
 * The next task, made while the learner is at this one. A task is what its number says, so it is the
 * same as without; where the run goes on otherwise, it is thrown away.
 */

/** Draws the task that comes next in the run, and its drawing for the place of this one's. */
export async function lookAhead(practice: Practice): Promise<void> {
	const number = (await nextIn(practice))?.number;
	if (number === undefined || practice.ahead?.number === number) return;
	const task = await taskFromNumber(number, loadToDraw);
	await tell();
	practice.ahead = task;
	whenIdle(() => {
		if (practice.ahead !== task) return;
		try {
			figureAhead(task, settings.units);
		} catch {
			// It throws again once its task is opened, and is told there.
		}
	});
}

async function nextIn({ run, atEnd }: Practice): Promise<RunTask | undefined> {
	if (!run) return undefined;
	const next = run.tasks[run.at + 1];
	if (next || atEnd || run.topic === 'plan') return next;
	return (await oneMore(run, run.topic))[0];
}
