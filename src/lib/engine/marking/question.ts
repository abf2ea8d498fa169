import type { Kind } from '../quantity/kinds/kind.ts';
import type { Value } from '../quantity/value.ts';
import type { Values } from '../solver/compiled.ts';
import { kindAt } from '../solver/kind-at.ts';
import { differs } from '../solver/tolerance.ts';
import type { Task } from '../tasks/task.ts';
import type { Cause, Entry } from './verdict.ts';
import type { World } from './world.ts';

/** One entry of the sheet, and how it stands by itself. */
export interface Seen {
	readonly key: string;
	readonly entry: Entry;
	/** `odd` has another number of values than the right one, so that it speaks for no other. */
	readonly state: 'right' | 'carried' | 'wrong' | 'odd';
	/** Whether an earlier check held it. */
	readonly earlier: boolean;
}

/** One wrong entry to explain, with all that the sheet shows besides. */
export interface Question {
	readonly task: Task;
	readonly key: string;
	readonly entry: Entry;
	/** As the student worked on with wrong values, and as if there were none. */
	readonly worlds: readonly [World, ...World[]];
	readonly sheet: readonly Seen[];
	/** Steps whose right values had been shown: no slip was made there. */
	readonly opened: readonly string[];
	/** Slips that the student has said to have made. */
	readonly told: readonly string[];
}

/** A cause that leads to the entry, and what speaks against it: the lowest cost is believed. */
export interface Candidate {
	readonly cause: Cause;
	readonly cost: number;
	/** The part of the cost that is there because the cause is seldom met. */
	readonly rarity: number;
	/** How many wrong entries of earlier checks it leads to as well. */
	readonly support: number;
	/** What it is done as in other steps too: entries of one act have one cause. */
	readonly act?: string | undefined;
}

export function kindOf({ task, key }: Question): Kind {
	return kindAt(task.method, key);
}

/** Whether these values come to another answer than the right one, and than without them. */
export function isOff({ task, key, entry }: Question, world: World, values: Values): boolean {
	const { method, right } = task;
	const { grain } = entry;
	return (
		differs(method, key, right, values, grain) && differs(method, key, world.base, values, grain)
	);
}

/**
 * Whether another entry of the sheet speaks against these values: they would have changed it, and
 * it is not what they come to. A wrong entry further down has a cause of its own.
 *
 * @param unused a step whose right entry was not worked on with
 */
export function isContradicted(
	question: Question,
	{ base }: World,
	values: Values,
	unused?: string
): boolean {
	const { task, key, sheet } = question;
	const { method } = task;
	const places = Object.keys(method.steps);
	return sheet.some((seen) => {
		if (seen.state === 'odd' || seen.key === unused) return false;
		if (!differs(method, seen.key, base, values)) return isAnother(question, seen, base, values);
		const value = values[seen.key];
		if (value !== undefined && kindAt(method, seen.key).isWritten(seen.entry, value)) return false;
		return seen.state === 'right' || places.indexOf(seen.key) < places.indexOf(key);
	});
}

/** Whether an entry is right to the digit, and these values, as good as they are, would be written otherwise. */
function isAnother({ task }: Question, seen: Seen, base: Values, values: Values): boolean {
	const isWritten = (value: Value | undefined) =>
		value !== undefined && kindAt(task.method, seen.key).isWritten(seen.entry, value, 'exact');
	return seen.state === 'right' && isWritten(base[seen.key]) && !isWritten(values[seen.key]);
}

/** How many wrong entries of earlier checks these values come to. */
export function supportOf({ task, sheet }: Question, values: Values): number {
	return sheet.filter((seen) => {
		const value = values[seen.key];
		const counts = seen.earlier && seen.state === 'wrong';
		return (
			counts && value !== undefined && kindAt(task.method, seen.key).isWritten(seen.entry, value)
		);
	}).length;
}
