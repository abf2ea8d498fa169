import type { Value } from '../quantity/kind.ts';
import { compiledOf, type Values } from './compiled.ts';
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
	const { steps, slips } = compiledOf(method);
	const { slips: made = {}, values: put = {}, carry } = changes;
	const values: Record<string, Value> = { ...given };
	for (const key of Object.keys(steps)) {
		const own = put[key];
		if (own !== undefined) {
			values[key] = own;
			continue;
		}
		const slipId = made[key];
		const formula = slipId === undefined ? steps[key] : slips[slipId];
		if (!formula) throw new Error(`unknown slip: ${slipId ?? key}`);
		const value = finite(formula.run(values), method, key);
		values[key] = carry ? carry(value, key) : value;
	}
	return values;
}

/** The first limit of the method that these values break, as the sentence that says so. */
export function brokenLimit(method: Method, values: Values): string | null {
	const at = compiledOf(method).limits.findIndex(
		(formula) => !(Number(formula.run(values)) >= -1e-9)
	);
	return at < 0 ? null : (method.limits[at]?.says ?? null);
}

function finite(value: Value, method: Method, key: string): Value {
	const numbers = typeof value === 'object' ? value : [value];
	if (numbers.every((one) => typeof one === 'string' || Number.isFinite(one))) return value;
	const label = method.steps[key]?.label.toLowerCase() ?? key;
	throw new TradeError(`These numbers give no answer for “${label}”: check them.`);
}
