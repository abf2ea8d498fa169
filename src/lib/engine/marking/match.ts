import type { Value } from '../quantity/kind.ts';
import { within } from '../solver/tolerance.ts';
import type { Exact } from '../quantity/exact.ts';
import type { Entry } from './verdict.ts';

/** Whether an answer is within the tolerance of a value; lists member by member. */
export function accepts(entry: Entry, value: Value, tolerance: Exact): boolean {
	const { value: answer } = entry;
	if (typeof answer === 'string' || typeof value === 'string') return answer === value;
	const [answers, values] = [listed(answer), typeof value === 'number' ? [value] : value];
	return (
		answers.length === values.length &&
		answers.every((one, i) => within(one, values[i] ?? NaN, tolerance))
	);
}

/**
 * How near a typed number must be to a value to be taken for it: `rounded` allows for a last
 * digit lost to rounding on the way, `exact` only for the places typed.
 */
export type Nearness = 'rounded' | 'exact';

/**
 * Whether an answer is this value as somebody would write it: to the places typed, or to the
 * nearest 64th when it was written as a fraction.
 */
export function isWritten(entry: Entry, value: Value, nearness: Nearness = 'rounded'): boolean {
	const { value: answer } = entry;
	if (typeof answer === 'string' || typeof value === 'string') return answer === value;
	const [answers, values] = [listed(answer), typeof value === 'number' ? [value] : value];
	const isNear = (one: Exact, i: number) =>
		Math.abs(one.valueOf() - (values[i] ?? NaN)) <= roomFor(entry, one, nearness);
	return answers.length === values.length && answers.every(isNear);
}

/** Coarser entries than this are matched no wider, or anything would match them. */
const widest = 0.0055;

function roomFor({ grain }: Entry, one: Exact, nearness: Nearness): number {
	const sixtyFourths = grain === 0 && one.d > 8n && 64n % one.d === 0n;
	const lost = nearness === 'exact' ? 0.0001 : 0.0005;
	const room = sixtyFourths ? 1 / 128 : Math.max(grain, lost);
	return Math.min(room, widest) + 1e-9;
}

/** The entry with every number multiplied, for trying other units. */
export function scaled(entry: Entry, factor: Exact): Entry {
	const { value, grain } = entry;
	if (typeof value === 'string') return entry;
	const times = (one: Exact) => one.mul(factor);
	return {
		value: isList(value) ? value.map(times) : times(value),
		grain: grain * factor.valueOf()
	};
}

export function listed(value: Exact | readonly Exact[]): readonly Exact[] {
	return isList(value) ? value : [value];
}

/** The answer as a plain value of the solver, in base units. */
export function plainValue({ value }: Entry): Value {
	if (typeof value === 'string') return value;
	const numbers = listed(value).map((one) => one.valueOf());
	return isList(value) ? numbers : (numbers[0] ?? NaN);
}

function isList(value: Exact | readonly Exact[]): value is readonly Exact[] {
	return Array.isArray(value);
}
