import type { Task } from '../tasks/task.ts';
import { explain } from './explain.ts';
import { misreadingsOf } from './misread-given.ts';
import { look } from './look.ts';
import type { Question, Seen } from './question.ts';
import type { Cause, Entries, Verdict, Verdicts } from './verdict.ts';
import { World } from './world.ts';

export { stepOf } from './say.ts';

/** What is known of the work on a task besides the entries of a check. */
export interface Evidence {
	/** Entries of the checks before, oldest first. */
	readonly earlier?: readonly Entries[];
	/** Steps whose right values had been shown. */
	readonly opened?: readonly string[];
	/** Slips that the student has said to have made. */
	readonly told?: readonly string[];
}

/**
 * Marks answers to a task, and explains the wrong ones together. A later answer that follows
 * correctly from an earlier wrong one is accepted as carried, so a slip is charged once.
 *
 * @param entries by step key; steps that were not answered are left out
 */
export function mark(task: Task, entries: Entries, evidence: Evidence = {}): Verdicts {
	const { earlier = [], opened = [], told = [] } = evidence;
	const { verdicts, sheet, wrong } = look(task, entries);
	const known = [...sheet, ...seenBefore(task, earlier, entries)];
	const plain = World.of(task);
	const questions = wrong.map(({ put, ...one }): Question => {
		const carries = Object.keys(put).length > 0;
		const worlds: Question['worlds'] = carries ? [new World(task, put), plain] : [plain];
		return { ...one, task, worlds, sheet: known, opened, told };
	});
	const causes = explain(questions);
	const keys = Object.keys(task.method.steps).filter((key) => Object.hasOwn(entries, key));
	return Object.fromEntries(keys.map((key) => [key, verdictBy(verdicts[key], causes[key])]));
}

/** Works what slips lead to at a step before it is answered, so that a wrong answer is explained sooner. */
export function prepare(task: Task, key: string): void {
	World.of(task).pairsAt(key);
	misreadingsOf(task);
}

/** A cause that was found goes before what an entry shows by itself, such as values left out. */
function verdictBy(shown: Verdict | undefined, cause: Cause = { kind: 'unknown' }): Verdict {
	const isFound = ['slip', 'either', 'other-step'].includes(cause.kind);
	return shown && !isFound ? shown : { kind: 'rework', cause };
}

/** The newest entries of earlier checks at steps that this one leaves out. */
function seenBefore(task: Task, earlier: readonly Entries[], now: Entries): Seen[] {
	const newest: Entries = Object.assign({}, ...earlier);
	const left = Object.entries(newest).filter(([key]) => !Object.hasOwn(now, key));
	const { sheet } = look(task, Object.fromEntries(left));
	return sheet.map((seen) => ({ ...seen, earlier: true }));
}
