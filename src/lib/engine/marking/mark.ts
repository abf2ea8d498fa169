import type { Task } from '../tasks/task.ts';
import { carriedIn, toleranceAt } from '../solver/tolerance.ts';
import type { Exact } from '../quantity/exact.ts';
import type { Value } from '../quantity/value.ts';
import { carriedRoom } from '../quantity/kinds/find-mistakes.ts';
import type { Judgement } from '../quantity/kinds/kind.ts';
import type { Values } from '../solver/compiled.ts';
import { type Changes, evaluate } from '../solver/evaluate.ts';
import { kindAt } from '../solver/kind-at.ts';
import { TradeError } from '../solver/trade-function.ts';
import { diagnose } from './diagnose.ts';
import type { Entry, Verdict, Verdicts } from './verdict.ts';

/**
 * Marks answers to a task, in the order of the method's steps. A later answer that follows
 * correctly from an earlier wrong one is accepted as carried, so a slip is charged once.
 *
 * @param entries by step key; steps that were not answered are left out
 */
export function mark(task: Task, entries: Readonly<Record<string, Entry>>): Verdicts {
	const verdicts: Record<string, Verdict> = {};
	const put: Record<string, Value> = {};
	for (const key of Object.keys(task.method.steps)) {
		const entry = Object.hasOwn(entries, key) ? entries[key] : undefined;
		if (!entry) continue;
		const verdict = markOne(task, key, entry, put);
		verdicts[key] = verdict;
		// What is not shaped like the right value cannot be worked on with.
		const value = kindAt(task.method, key).toValue(entry, task.right[key]);
		if (value !== null && (verdict.kind !== 'accept' || verdict.carried)) put[key] = value;
	}
	return verdicts;
}

function markOne(task: Task, key: string, entry: Entry, put: Values): Verdict {
	const alone = judged(task, key, entry, {});
	if (alone.is === 'right') return { kind: 'accept', carried: false };
	const carries = Object.keys(put).length > 0;
	const after = carries ? judged(task, key, entry, put) : alone;
	if (after.is === 'right') return { kind: 'accept', carried: true };
	for (const one of [alone, after]) {
		if (one.is === 'not-best') return { kind: 'holds', says: one.says };
	}
	const cause = diagnose({ task, key, entry, put });
	if (cause.kind !== 'unknown' || !carries) return { kind: 'rework', cause };
	return { kind: 'rework', cause: diagnose({ task, key, entry, put: {} }) };
}

/** Right as computed, or as it comes out when every step is rounded as the shop carries it. */
function judged({ method, drawn }: Task, key: string, entry: Entry, put: Values): Judgement {
	const kind = kindAt(method, key);
	const judgedBy = (changes: Changes, tolerance: Exact): Judgement => {
		const values = evaluate(method, drawn.given, changes);
		const value = values[key];
		return value === undefined ? { is: 'off' } : kind.judge(entry, value, tolerance, values);
	};
	try {
		const exact = judgedBy({ values: put }, toleranceAt(method, key));
		if (exact.is === 'right') return exact;
		const rounded = judgedBy({ values: put, carry: carriedIn(method) }, carriedRoom(kind));
		return rounded.is === 'right' ? rounded : exact;
	} catch (error) {
		if (error instanceof TradeError) return { is: 'off' };
		throw error;
	}
}
