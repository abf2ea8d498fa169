import Fraction from 'fraction.js';
import type { Task } from '../tasks/task.ts';
import { shopRounded, toleranceAt } from '../solver/tolerance.ts';
import type { Value } from '../quantity/kind.ts';
import type { Values } from '../solver/compiled.ts';
import { evaluate } from '../solver/evaluate.ts';
import { TradeError } from '../solver/trade-function.ts';
import { diagnose } from './diagnose.ts';
import { accepts, plainValue } from './match.ts';
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
		const value = plainValue(entry);
		const workable = typeof value === typeof task.right[key];
		if (workable && (verdict.kind === 'rework' || verdict.carried)) put[key] = value;
	}
	return verdicts;
}

function markOne(task: Task, key: string, entry: Entry, put: Values): Verdict {
	if (isRight(task, key, entry, {})) return { kind: 'accept', carried: false };
	if (Object.keys(put).length > 0 && isRight(task, key, entry, put)) {
		return { kind: 'accept', carried: true };
	}
	const cause = diagnose({ task, key, entry, put });
	if (cause.kind !== 'unknown' || Object.keys(put).length === 0) return { kind: 'rework', cause };
	return { kind: 'rework', cause: diagnose({ task, key, entry, put: {} }) };
}

const halfThousandth = new Fraction(1, 2000);

/** Right as computed, or as it comes out when every step is rounded to the thousandth. */
function isRight(task: Task, key: string, entry: Entry, put: Values): boolean {
	const { method } = task;
	const tolerance = toleranceAt(method, key);
	try {
		const exact = evaluate(method, task.drawn.given, { values: put })[key];
		if (exact !== undefined && accepts(entry, exact, tolerance)) return true;
		const rounded = evaluate(method, task.drawn.given, { values: put, carry: shopRounded })[key];
		return rounded !== undefined && accepts(entry, rounded, halfThousandth);
	} catch (error) {
		if (error instanceof TradeError) return false;
		throw error;
	}
}
