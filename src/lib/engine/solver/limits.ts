import { plainKind } from '../quantity/kinds/plain.ts';
import type { Kind } from '../quantity/kinds/kind.ts';
import type { Value } from '../quantity/value.ts';
import { type CompiledSlip, inNames, unitOf, type Values } from './compiled.ts';
import { kindGiven } from './kind-at.ts';
import type { Limit, Method } from './method.ts';

/** How one value stands to its limit; of a list, one member. */
export interface Kept {
	readonly limit: Limit;
	/** What value and bound are. */
	readonly kind: Kind;
	/** Place in the list, where the value is one of a list. */
	readonly place: number | null;
	readonly value: number;
	readonly bound: number;
	/** How far the value is inside the limit; below zero, how far it is outside. */
	readonly margin: number;
	/** `undecided`: so near the limit that the instrument cannot tell. */
	readonly verdict: 'holds' | 'fails' | 'undecided';
}

/** Computed floats nearer to a limit than this are on it, and a limit itself is allowed. */
export const slack = 1e-9;

/** The worked values against every limit of the method, in its order. */
export function limitsOf(method: Method, values: Values): Kept[] {
	return method.limits.flatMap((limit) => {
		const { kind, seen: value, bound } = compiledLimit(limit);
		const [seen, bounds] = [value(values), bound(values)];
		return seen.map((one, i): Kept => {
			const to = bounds[i] ?? bounds[0] ?? NaN;
			const margin = limit.least ? one - to : to - one;
			const verdict = margin < -slack ? 'fails' : 'holds';
			return {
				limit,
				kind,
				place: seen.length > 1 ? i : null,
				value: one,
				bound: to,
				margin,
				verdict
			};
		});
	});
}

/**
 * The first limit of the method that these values break, as the sentence that says so.
 *
 * @param known the names that have a value, where not all of them have
 */
export function brokenLimit(
	method: Method,
	values: Values,
	known?: ReadonlySet<string>
): string | null {
	const limits = known ? method.limits.filter((limit) => restsOn(limit, known)) : method.limits;
	const broken = limitsOf({ ...method, limits }, values).find(({ verdict }) => verdict === 'fails');
	return broken?.limit.says ?? null;
}

/** Whether everything that a limit is worked from is among the known names. */
export function restsOn({ from }: Limit, known: ReadonlySet<string>): boolean {
	const { value, bound } = unitLimit(from);
	const needs = [...Object.keys(value.needs), ...Object.keys(bound.needs)];
	return needs.every((name) => known.has(from.names[name] ?? name));
}

/** The compiled formulas of a limit. */
export function unitLimit({ unit, key }: Limit['from']) {
	const limit = unitOf(unit).limits[Number(key)];
	if (!limit) throw new Error(`not compiled: ${unit}, limit ${Number(key) + 1}`);
	return limit;
}

function compiledLimit({ from }: Limit) {
	const { dimension, value, bound } = unitLimit(from);
	const numbers = ({ run, needs, list }: CompiledSlip) => {
		const kind = kindGiven(null, { dimension, list });
		return inNames((v) => kind.numbers(run(v, v) as Value), needs, from.names);
	};
	return { kind: plainKind(dimension), seen: numbers(value), bound: numbers(bound) };
}
