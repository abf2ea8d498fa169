import Fraction from 'fraction.js';
import { type Exact, exactly } from '../quantity/exact.ts';
import type { Value } from '../quantity/kind.ts';
import type { Values } from '../solver/compiled.ts';
import type { Method } from '../solver/method.ts';

/** Room between the edge of the tolerance and a slip, so that the two are never confused. */
const clearance = 0.0006;

/** How far an answer may be off at a step, in its base unit; null for words. */
export function toleranceAt(method: Method, key: string): Exact {
	const amount = method.steps[key]?.tolerance?.amount;
	if (amount === undefined) throw new Error(`no tolerance: ${method.id}.${key}`);
	return new Fraction(amount);
}

/** Whether two results differ at `key` by more than the tolerance and a little. */
export function differs(method: Method, key: string, right: Values, other: Values): boolean {
	const [a, b] = [right[key], other[key]];
	if (a === undefined || b === undefined || typeof a === 'string' || typeof b === 'string')
		return a !== b;
	const allowed = toleranceAt(method, key).valueOf() + clearance;
	const [as, bs] = [listed(a), listed(b)];
	return as.length !== bs.length || as.some((one, i) => Math.abs(one - (bs[i] ?? NaN)) > allowed);
}

/** Whether an answer lies within the tolerance of a value, both edges included, decided exactly. */
export function within(answer: Exact, value: number, tolerance: Exact): boolean {
	return answer.sub(exactly(value)).abs().compare(tolerance) <= 0;
}

function listed(value: number | readonly number[]): readonly number[] {
	return typeof value === 'number' ? [value] : value;
}

/** A result rounded half up to the thousandth, as it is written down between steps. */
export function shopRounded(value: Value): Value {
	if (typeof value === 'string') return value;
	if (typeof value === 'number') return roundTo(value, 1000);
	return value.map((one) => roundTo(one, 1000));
}

function roundTo(value: number, parts: number): number {
	return Math.floor(value * parts + 0.5 + 1e-9) / parts;
}
