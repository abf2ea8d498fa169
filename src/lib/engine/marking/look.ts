import type { Value } from '../quantity/value.ts';
import type { Judgement } from '../quantity/kinds/kind.ts';
import type { Values } from '../solver/compiled.ts';
import { kindAt } from '../solver/kind-at.ts';
import type { Task } from '../tasks/task.ts';
import { factorOf, multiplied, sizeNamed } from './factor.ts';
import { judged } from './judge.ts';
import type { Seen } from './question.ts';
import type { Entries, Entry, Verdict } from './verdict.ts';

/** The entries of a check, each looked at by itself, in the order of the method's steps. */
export interface Looked {
	/** Of the wrong entries, only those that tell by themselves what is wrong. */
	readonly verdicts: Readonly<Record<string, Verdict>>;
	readonly sheet: readonly Seen[];
	readonly wrong: readonly Wrong[];
}

/** A wrong entry, and the wrong values before it that the student worked on with. */
export interface Wrong {
	readonly key: string;
	readonly entry: Entry;
	readonly put: Values;
}

export function look(task: Task, entries: Entries): Looked {
	const verdicts: Record<string, Verdict> = {};
	const sheet: Seen[] = [];
	const wrong: Wrong[] = [];
	let put: Readonly<Record<string, Value>> = {};
	for (const key of Object.keys(task.method.steps)) {
		const typed = Object.hasOwn(entries, key) ? entries[key] : undefined;
		if (!typed) continue;
		const entry = typed.times === undefined ? typed : multiplied(task, key, typed);
		if (!entry) {
			verdicts[key] = { kind: 'unread', says: 'Write the size itself, worked out.' };
			continue;
		}
		const { state, verdict } = lookAt(task, key, entry, put);
		const factor = notWorkedOut(task, typed, entry);
		const told = factor ?? verdict;
		if (told) verdicts[key] = told;
		if (state === null) continue;
		sheet.push({ key, entry, state, earlier: false });
		const isOpen = state === 'wrong' || state === 'odd';
		if (isOpen && !factor) wrong.push({ key, entry, put });
		// What is not shaped like the right value cannot be worked on with.
		const value = kindAt(task.method, key).toValue(entry, task.right[key]);
		if (value !== null && state !== 'right') put = { ...put, [key]: value };
	}
	return { verdicts, sheet, wrong };
}

/** The factor of a rule with its size, left at that: it comes to the right value of a step. */
function notWorkedOut(task: Task, { value, times }: Entry, product: Entry): Verdict | null {
	const of = sizeNamed(task, times);
	if (of === null) return null;
	const { method, right } = task;
	const isStep = Object.keys(method.steps).some((key) => {
		const kind = kindAt(method, key);
		const wanted = right[key];
		if (wanted === undefined || kind.isList || kind.dimension.formula !== 'in') return false;
		return kind.isWritten(product, wanted, 'exact');
	});
	return isStep ? { kind: 'rework', cause: factorOf(of, Number(value)) } : null;
}

/** How an entry stands; no state where it is only a part, and no verdict where it is to explain. */
function lookAt(
	task: Task,
	key: string,
	entry: Entry,
	put: Values
): { readonly state: Seen['state'] | null; readonly verdict: Verdict | null } {
	const alone = judged(task, key, entry, {});
	if (alone.is === 'right') return { state: 'right', verdict: { kind: 'accept', carried: false } };
	const after = judged(task, key, entry, put);
	if (after.is === 'right') return { state: 'carried', verdict: { kind: 'accept', carried: true } };
	const verdict = verdictOn(alone.is === 'not-best' ? alone : after);
	if (verdict === null) return { state: 'wrong', verdict };
	// The beginning of a list, each value right, is to be finished, whatever else may lead to it.
	const isPart = alone.is === 'partial' || (alone.is === 'miscounted' && alone.part === true);
	return { state: isPart ? null : 'odd', verdict };
}

/** What tells by itself what is wrong with an entry that is not right. */
function verdictOn(judgement: Exclude<Judgement, { readonly is: 'right' }>): Verdict | null {
	switch (judgement.is) {
		case 'not-best':
			return { kind: 'holds', says: judgement.says };
		case 'partial':
			return { kind: 'unread', says: judgement.says };
		case 'breaks':
			return { kind: 'rework', cause: { kind: 'breaks', says: judgement.says } };
		case 'miscounted': {
			const { wanted, got } = judgement;
			const says =
				got < wanted
					? `${got} of ${wanted}: write all of them.`
					: `${got} values are here; ${wanted} are wanted.`;
			return { kind: 'unread', says };
		}
		case 'off':
			return null;
	}
}
