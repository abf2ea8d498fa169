import Fraction from 'fraction.js';
import { type Exact, exactly } from '../quantity/exact.ts';
import type { Value } from '../quantity/kind.ts';
import type { Values } from './compiled.ts';
import type { Method, Tolerance } from './method.ts';

/** Room between the edge of the tolerance and a slip, so that the two are never confused. */
const clearance = 0.0006;

interface Allowed {
	readonly exact: Exact;
	readonly size: number;
}

/** Tolerances as numbers, worked out once each: drawing a task compares many values with them. */
const allowed = new WeakMap<Tolerance, Allowed>();

function allowedAt(method: Method, key: string): Allowed {
	const tolerance = method.steps[key]?.tolerance;
	if (!tolerance) throw new Error(`no tolerance: ${method.id}.${key}`);
	const known = allowed.get(tolerance);
	if (known) return known;
	const exact = new Fraction(tolerance.amount);
	const fresh = { exact, size: exact.valueOf() };
	allowed.set(tolerance, fresh);
	return fresh;
}

/** How far an answer may be off at a step, in its base unit. */
export function toleranceAt(method: Method, key: string): Exact {
	return allowedAt(method, key).exact;
}

/** Whether two results differ at `key` by more than the tolerance and a little. */
export function differs(method: Method, key: string, right: Values, other: Values): boolean {
	const [a, b] = [right[key], other[key]];
	if (typeof a === 'number' && typeof b === 'number') {
		return Math.abs(a - b) > allowedAt(method, key).size + clearance;
	}
	if (typeof a !== 'object' || typeof b !== 'object') return a !== b;
	const room = allowedAt(method, key).size + clearance;
	return a.length !== b.length || a.some((one, i) => Math.abs(one - (b[i] ?? NaN)) > room);
}

/** Whether an answer lies within the tolerance of a value, both edges included, decided exactly. */
export function within(answer: Exact, value: number, tolerance: Exact): boolean {
	return answer.sub(exactly(value)).abs().compare(tolerance) <= 0;
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
