import { Exact, exactly, fromDigits, ratio } from '../quantity/exact.ts';
import type { Value } from '../quantity/value.ts';
import type { Kind } from '../quantity/kinds/kind.ts';
import { carried } from '../quantity/kinds/rounding.ts';
import type { ReadValue } from '../quantity/reading.ts';
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
	/** For answers in millimetres, in inches; never under `exact`. */
	readonly metric: Exact;
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
	if (!tolerance)
		throw new Error(`${method.id}.${key} has no tolerance: name one of trade/tolerances.ts`);
	const kind = kindAt(method, key);
	const exact = amountOf(tolerance.amount);
	const millimetres = amountOf(tolerance.metric?.millimetres ?? '0').div(inch);
	const metric = millimetres.compare(exact) > 0 ? millimetres : exact;
	return { kind, exact, metric, room: exact.valueOf() + clearance / kind.fine };
}

/** What a tolerance is written as: `0.005` or `1/64`. */
function amountOf(text: string): Exact {
	const [whole = '', decimals = ''] = text.split('.');
	const [numerator = '', denominator] = text.split('/');
	return denominator === undefined
		? fromDigits(whole, decimals)
		: ratio(BigInt(numerator), BigInt(denominator));
}

/** Millimetres in one. */
const inch = exactly(25.4);

/**
 * How far an entry may be off at a step: as a metric tool reads where it was given in millimetres,
 * 8 mm for 5/16 in.
 */
export function toleranceOf(method: Method, key: string, entry: ReadValue): Exact {
	const { exact, metric } = allowedAt(method, key);
	return isMetric(entry) ? metric : exact;
}

/**
 * Whether a length was given in millimetres: inches that are no multiple of 1/127 in were not, and
 * the millimetres that come out even in inches need no other tolerance.
 */
function isMetric(entry: ReadValue): boolean {
	if (entry instanceof Exact) return entry.d % 127n === 0n;
	return Array.isArray(entry) && entry.some(isMetric);
}

/** How far an answer may be off at a step, in its base unit. */
export function toleranceAt(method: Method, key: string): Exact {
	return allowedAt(method, key).exact;
}

/**
 * Whether two results differ at `key` by more than the tolerance and a little.
 *
 * @param grain the last place of an entry that is written finer than a shop carries: less is little then
 */
export function differs(
	method: Method,
	key: string,
	right: Values,
	other: Values,
	grain = 0
): boolean {
	const { kind, exact, room } = allowedAt(method, key);
	const [one, two] = [right[key], other[key]];
	if (one === undefined || two === undefined) return one !== two;
	const little = clearance * Math.min(grain, 1 / kind.fine);
	return kind.differs(one, two, grain > 0 ? exact.valueOf() + little : room);
}

/** Rounds each result as a shop writes it down between steps: lengths half up to the thousandth. */
export function carriedIn(method: Method): (value: Value, key: string) => Value {
	return (value, key) => carried(kindAt(method, key), value);
}

/** Half of a division of a steel rule, in inches: how far off a value is laid out with it. */
const halfDivision = 1 / 128;

/**
 * Whether some entry of `other` would be accepted for `right` at `key`: the two lie within the
 * tolerance, or come within it when `other` is written in thousandths, or laid out to the nearest
 * 1/64 in where that is how near the step is held.
 */
export function isTakenFor(method: Method, key: string, right: Values, other: Values): boolean {
	const { kind, exact, room } = allowedAt(method, key);
	const ruled = kind.dimension.name === 'length' && exact.compare(2 * halfDivision) >= 0;
	const [one, two] = [right[key], other[key]];
	if (one === undefined || two === undefined) return false;
	return !kind.differs(one, two, room + (ruled ? halfDivision : 0));
}
