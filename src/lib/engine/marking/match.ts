/* BRIDGE, to go once marking asks the kind of the step: `kindAt(method, key)` has all of these. */

import { kindLike } from '../quantity/bridge.ts';
import type { Exact } from '../quantity/exact.ts';
import type { Value } from '../quantity/kind.ts';
import type { Nearness } from '../quantity/kinds/kind.ts';
import type { Entry } from './verdict.ts';

export type { Nearness } from '../quantity/kinds/kind.ts';

/** Whether an answer is within the tolerance of a value; lists member by member. */
export function accepts(entry: Entry, value: Value, tolerance: Exact): boolean {
	const kind = kindLike(value);
	return kind === kindLike(entry.value) && kind.judge(entry, value, tolerance).is === 'right';
}

/** Whether an answer is this value as somebody would write it. */
export function isWritten(entry: Entry, value: Value, nearness: Nearness = 'rounded'): boolean {
	const kind = kindLike(value);
	return kind === kindLike(entry.value) && kind.isWritten(entry, value, nearness);
}

/** The entry with every number multiplied, for trying other units. */
export function scaled(entry: Entry, factor: Exact): Entry {
	return kindLike(entry.value).scaled(entry, factor);
}

export function listed(value: Exact | readonly Exact[]): readonly Exact[] {
	return Array.isArray(value) ? value : [value as Exact];
}

/** The answer as a plain value of the solver, in base units. */
export function plainValue(entry: Entry): Value {
	return kindLike(entry.value).toValue(entry) ?? NaN;
}
