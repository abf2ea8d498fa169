import type { Value } from '../quantity/value.ts';
import { compiledOf, type Values } from './compiled.ts';
import { brokenLimit } from './limits.ts';
import { kindAt } from './kind-at.ts';
import type { Method } from './method.ts';
import { TradeError } from './trade-function.ts';

/** What to change in a method before it is worked. */
export interface Changes {
	/** Slip to make in a step: step key → slip id. */
	readonly slips?: Readonly<Record<string, string>>;
	/** Values put in at a step instead of its formula's: a student's own, for follow-through. */
	readonly values?: Values;
	/** Applied to every step's result before the next step uses it: rounding as the shop does. */
	readonly carry?: (value: Value, stepKey: string) => Value;
}

/**
 * Works a method: the values of all its steps, in base units, with the givens beside them.
 * Throws a `TradeError` where a table has no row or the geometry has no room.
 */
export function evaluate(method: Method, given: Values, changes: Changes = {}): Values {
	const values = compiledOf(method).copy(given);
	workInto(values, method, changes);
	return values;
}

/** Works every step, in order, into values that hold the givens. */
export function workInto(values: Record<string, Value>, method: Method, changes: Changes): void {
	const { order, slips } = compiledOf(method);
	const { slips: made, values: put, carry } = changes;
	for (const { key, run } of order) {
		const own = put?.[key];
		if (own !== undefined) {
			values[key] = own;
			continue;
		}
		const slipId = made?.[key];
		const work = slipId === undefined ? run : slips[slipId]?.run;
		if (!work) throw new Error(`${method.id}.${key}: unknown slip: ${slipId ?? key}`);
		const value = sound(work(values), method, key, values);
		values[key] = carry ? carry(value, key) : value;
	}
}

/**
 * The values of a worked method with one slip made: the same as `evaluate` with that slip, but
 * only the steps from the slip on are worked again.
 *
 * @param put values that stay as they are, as in `Changes`: a student's own
 */
export function withSlip(
	method: Method,
	worked: Values,
	slipId: string,
	put: Values = none
): Values {
	const values = compiledOf(method).copy(worked);
	workFrom(values, method, slipId, put);
	return values;
}

/** Works the steps from a slip on; `done` takes the keys of those that were. */
export function workFrom(
	values: Record<string, Value>,
	method: Method,
	slipId: string,
	put: Values,
	done?: Set<string>
): void {
	const { order, slips, slipAt } = compiledOf(method);
	const at = slipAt[slipId];
	const made = slips[slipId];
	if (at === undefined || !made) throw new Error(`${method.id}: unknown slip: ${slipId}`);
	for (let i = at; i < order.length; i++) {
		const step = order[i];
		if (!step) break;
		if (put[step.key] !== undefined) continue;
		const run = i === at ? made.run : step.run;
		values[step.key] = sound(run(values), method, step.key, values);
		done?.add(step.key);
	}
}

/** No values put in. */
export const none: Values = {};

function sound(value: Value, method: Method, key: string, before: Values): Value {
	// Numbers first: drawing a task works many.
	const plain = typeof value === 'number' && Number.isFinite(value);
	if (plain || kindAt(method, key).isSound(value)) return value;
	const label = method.steps[key]?.label.toLowerCase() ?? key;
	// The steps from here on have no value yet; limits that rest on them cannot tell why.
	const steps = Object.keys(method.steps);
	const known = new Set([...Object.keys(method.given), ...steps.slice(0, steps.indexOf(key))]);
	throw new TradeError(
		brokenLimit(method, before, known) ?? `These numbers give no answer for “${label}”: check them.`
	);
}
