import Fraction from 'fraction.js';
import type { Exact } from '../quantity/exact.ts';
import type { Value } from '../quantity/value.ts';
import type { Kind } from '../quantity/kinds/kind.ts';
import { carried } from '../quantity/kinds/rounding.ts';
import type { Values } from './compiled.ts';
import { kindAt } from './kind-at.ts';
import type { Method } from './method.ts';

/**
 * Room between the edge of the tolerance and a slip, so that the two are never confused: of the
 * last place that a shop carries, and a little more than the half that rounding takes.
 */
const clearance = 0.6;

interface Allowed {
	readonly kind: Kind;
	readonly exact: Exact;
	/** The tolerance and the clearance, as a number. */
	readonly room: number;
}

/** Worked out once for each step: drawing a task compares many values. */
const allowed = new WeakMap<Method, Map<string, Allowed>>();

function allowedAt(method: Method, key: string): Allowed {
	const inMethod = allowed.get(method) ?? new Map<string, Allowed>();
	allowed.set(method, inMethod);
	const known = inMethod.get(key) ?? newAllowed(method, key);
	inMethod.set(key, known);
	return known;
}

function newAllowed(method: Method, key: string): Allowed {
	const tolerance = method.steps[key]?.tolerance;
	if (!tolerance) throw new Error(`no tolerance: ${method.id}.${key}`);
	const kind = kindAt(method, key);
	const exact = new Fraction(tolerance.amount);
	return { kind, exact, room: exact.valueOf() + clearance / kind.fine };
}

/** How far an answer may be off at a step, in its base unit. */
export function toleranceAt(method: Method, key: string): Exact {
	return allowedAt(method, key).exact;
}

/** Whether two results differ at `key` by more than the tolerance and a little. */
export function differs(method: Method, key: string, right: Values, other: Values): boolean {
	const { kind, room } = allowedAt(method, key);
	const [one, two] = [right[key], other[key]];
	return one === undefined || two === undefined ? one !== two : kind.differs(one, two, room);
}

/** Rounds each result as a shop writes it down between steps: lengths half up to the thousandth. */
export function carriedIn(method: Method): (value: Value, key: string) => Value {
	return (value, key) => carried(kindAt(method, key), value);
}
