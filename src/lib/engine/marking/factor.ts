import { decimalText, exactly } from '../quantity/exact.ts';
import type { Entry, Kind } from '../quantity/kinds/kind.ts';
import { evaluateAsFar } from '../solver/as-far.ts';
import { kindAt } from '../solver/kind-at.ts';
import { symbolOf } from '../solver/show-step.ts';
import type { Task } from '../tasks/task.ts';
import type { Cause } from './verdict.ts';

/*
 * The factor of a rule given for the size: `2`, `2D` or `1.5 D`. The rule is told by what the
 * method does: it gives so many times a size, whatever that size is.
 */

/** The factors of the trade's rules have three places at most. */
const finest = 1000;
const largest = 20;

/** The size that the letter behind a factor stands for, by key: `D`, or the thickest sheet for T. */
export function sizeNamed({ method, right }: Task, letter: string | undefined): string | null {
	const keys = Object.keys(right);
	const named = keys.find((key) => symbolOf(method, key).toUpperCase() === letter);
	return named ?? (letter === 'T' ? (keys.find((key) => key === 'thickest') ?? null) : null);
}

/** The entry with its factor multiplied by the size; null where the task has no such size. */
export function multiplied(task: Task, key: string, entry: Entry): Entry | null {
	const size = task.right[sizeNamed(task, entry.times) ?? ''];
	if (typeof size !== 'number') return null;
	const { value } = kindAt(task.method, key).scaled(entry, exactly(size));
	return { value, grain: 1e-6 };
}

/** That a bare number is the factor of the rule, and of which size; null where it is not. */
export function factorCause(task: Task, key: string, entry: Entry): Cause | null {
	const kind = kindAt(task.method, key);
	const typed = kind.isList ? null : kind.toValue(entry);
	const right = task.right[key];
	if (kind.dimension.formula !== 'in' || typeof typed !== 'number') return null;
	if (typeof right !== 'number' || right === 0 || typed === 1 || typed > largest) return null;
	if (!isWrittenPlain(typed, entry) || isGiven(task, kind, typed)) return null;
	const of = Object.keys(task.right).find((size) => {
		const value = task.right[size];
		const isSize =
			typeof value === 'number' && kindAt(task.method, size).dimension === kind.dimension;
		return isSize && Math.abs(value * typed - right) < 1e-9 && isTimes(task, key, size, value);
	});
	return of === undefined ? null : factorOf(of, typed);
}

export function factorOf(of: string, times: number): Cause {
	return { kind: 'factor', of, times: decimalText(exactly(times), 0, 3) };
}

/** Whether a number is written as factors are, and not as a size on a rule: `2`, `1.5`. */
function isWrittenPlain(typed: number, { grain }: Entry): boolean {
	const places = typed * finest;
	return Math.abs(places - Math.round(places)) < 1e-9 && (grain > 0 || Number.isInteger(typed));
}

/** Whether a number stands on the paper as a size of the kind. */
function isGiven({ method, drawn }: Task, { dimension }: Kind, typed: number): boolean {
	return Object.entries(drawn.given).some(
		([key, value]) =>
			kindAt(method, key).dimension === dimension && Math.abs(Number(value) - typed) < 1e-9
	);
}

/** Whether the method gives so many times this size, whatever it is. */
function isTimes({ method, drawn, right }: Task, key: string, size: string, own: number): boolean {
	const more = 1.25;
	const isGiven = Object.hasOwn(method.given, size);
	const values = { [size]: own * more };
	const given = isGiven ? { ...drawn.given, ...values } : drawn.given;
	const other = evaluateAsFar(method, given, isGiven ? {} : { values })[key];
	return Math.abs(Number(other) - Number(right[key]) * more) < 1e-9;
}

/** `2D is the rule; multiply by D.` */
export function factorSays({ method }: Task, of: string, times: string): string {
	const symbol = symbolOf(method, of);
	if (symbol.length === 1) return `${times}${symbol} is the rule; multiply by ${symbol}.`;
	const label = (method.given[of] ?? method.steps[of])?.label ?? of;
	return `${times} is the factor of the rule; multiply it by “${label}”.`;
}
