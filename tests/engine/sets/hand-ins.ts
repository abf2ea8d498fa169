import { type HandIn, type HandInAnswer, noAnswer } from '../../../src/lib/engine/sets/hand-in.ts';
import type { OpenSet, SetTask } from '../../../src/lib/engine/sets/open-set.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import type { Task } from '../../../src/lib/engine/tasks/task.ts';
import { writeSet } from '../../../src/lib/exchange/set-link.ts';

/** A value of a task as somebody types it who has it right: without the name in brackets. */
export function rightText({ method, right }: Task, key: string): string {
	return textAt(method, key, right[key] ?? '').replace(/ \(.*\)$/, '');
}

export function rightEntries({ task }: SetTask): Record<string, string> {
	return Object.fromEntries(task.drawn.asked.map((key) => [key, rightText(task, key)]));
}

type Typed = Readonly<Record<string, string | undefined>>;

export function answerAt(place: number, typed: Typed): HandInAnswer {
	const entries: Record<string, string> = {};
	for (const [key, text] of Object.entries(typed)) if (text !== undefined) entries[key] = text;
	return { ...noAnswer(place), entries };
}

/** A hand-in with the entries that `entriesIn` gives for each task of the code's sheet. */
export async function handInOf(
	open: OpenSet,
	code: string,
	entriesIn: (task: SetTask, place: number) => Typed = rightEntries
): Promise<HandIn> {
	return {
		set: await writeSet(open.set),
		hash: open.hash,
		code,
		name: '',
		version: 1,
		promised: false,
		at: null,
		answers: open.for(code).map((task, i) => answerAt(i + 1, entriesIn(task, i + 1)))
	};
}
