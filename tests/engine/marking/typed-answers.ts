import { cardByCode, loadFamily } from '../../../src/lib/engine/families/catalogue.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { entryOf, readAnswer } from '../../../src/lib/engine/marking/answer.ts';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import type { Cause, Entries, Verdict } from '../../../src/lib/engine/marking/verdict.ts';
import type { Values } from '../../../src/lib/engine/solver/compiled.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import type { Method } from '../../../src/lib/engine/solver/method.ts';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';

await loadReader();

/** A task of a method with chosen givens, asking for every step unless told otherwise. */
export async function taskOf(
	code: string,
	method: Method,
	given: Values,
	asked: readonly string[] = Object.keys(method.steps)
): Promise<Task> {
	const card = cardByCode(code);
	if (!card) throw new Error(`no family: ${code}`);
	const family = await loadFamily(card);
	const sample = drawTask(family, 1, 0);
	return {
		...sample,
		family: { ...family, method },
		method,
		drawn: { ...sample.drawn, given, asked },
		right: evaluate(method, given)
	};
}

/** Answers as they were typed, by step key. */
export function entriesOf(task: Task, typed: Readonly<Record<string, string>>): Entries {
	const entries = Object.entries(typed).map(([key, text]) => {
		const entry = entryOf(readAnswer(task.method, key, text, 'in'));
		if (!entry) throw new Error(`not read: ${text}`);
		return [key, entry] as const;
	});
	return Object.fromEntries(entries);
}

/** The verdicts on them. */
export function verdictsOn(
	task: Task,
	typed: Readonly<Record<string, string>>
): Record<string, Verdict> {
	return { ...mark(task, entriesOf(task, typed)) };
}

/** Why one of them is wrong; null where it is not. */
export function causeIn(
	task: Task,
	typed: Readonly<Record<string, string>>,
	key: string
): Cause | null {
	const verdict = verdictsOn(task, typed)[key];
	return verdict?.kind === 'rework' ? verdict.cause : null;
}
