import type { TaskMark } from '$lib/engine/sets/collect.ts';
import { taskFromDraw } from '$lib/engine/sets/kept-draws.ts';
import type { TaskSet } from '$lib/engine/sets/set.ts';
import { cardByCode, loadFamily } from '$lib/engine/families/catalogue.ts';
import { readTaskNumber, TaskNumberError } from '$lib/engine/tasks/task-number.ts';
import { type Task, taskFromNumber } from '$lib/engine/tasks/task.ts';
import { unpackSheets } from '$lib/exchange/kept-sheets.ts';
import { setShelf } from '../sets/shelf.svelte.ts';

/** The task of a mark as the student had it; null where it can be shown no more. */
export async function taskShown(
	set: TaskSet,
	code: string,
	{ task: number, place }: Pick<TaskMark, 'task' | 'place'>
): Promise<Task | null> {
	try {
		return await taskFromNumber(number);
	} catch (error) {
		if (!(error instanceof TaskNumberError)) throw error;
	}
	const kept = (await unpackSheets(await setShelf.keptFor(set))).at(
		set.numbers === 'own' ? code : null,
		place
	);
	const card = cardByCode(readTaskNumber(number).code);
	return kept?.number === number && card ? taskFromDraw(kept, await loadFamily(card)) : null;
}
