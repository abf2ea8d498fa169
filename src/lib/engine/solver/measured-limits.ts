import type { Kind } from '../quantity/kinds/kind.ts';
import type { Value } from '../quantity/value.ts';
import type { Values } from './compiled.ts';
import { kindAt } from './kind-at.ts';
import { type Kept, limitsOf, slack, unitLimit } from './limits.ts';
import type { Limit, Method } from './method.ts';

// By itself, so that practice, which measures nothing, does not load it.

/**
 * The values worked from measured givens against every limit: a margin that the resolution of the instrument could turn to
 * either side is undecided.
 *
 * @param work works the method at other givens
 * @param resolution smallest division of the instrument by given, in base units
 */
export function measuredLimits(
	method: Method,
	given: Values,
	resolution: Readonly<Record<string, number>>,
	work: (given: Values) => Values
): Kept[] {
	const kept = limitsOf(method, work(given));
	const others = Object.entries(resolution).flatMap(([key, step]) =>
		numbersIn(kindAt(method, key), given[key]).map((_, place) =>
			[step, -step].map((by) => limitsOf(method, work(nudged(method, given, key, place, by))))
		)
	);
	return kept.map((one, i) => {
		// Each reading may be off by a division: the margin, by what they come to together.
		const spread = others.reduce((sum, both) => sum + widest(both, one, i), 0);
		return spread > 0 && Math.abs(one.margin) <= spread + slack
			? { ...one, verdict: 'undecided' as const }
			: one;
	});
}

function widest(both: readonly Kept[][], { margin }: Kept, i: number): number {
	return Math.max(...both.map((kept) => Math.abs((kept[i]?.margin ?? margin) - margin)));
}

/** The givens with the number at one place of one of them changed. */
function nudged(method: Method, given: Values, key: string, place: number, by: number): Values {
	const value = given[key];
	if (value === undefined) return given;
	const changed = kindAt(method, key).map(value, (one, at) => (at === place ? one + by : one));
	return { ...given, [key]: changed };
}

function numbersIn(kind: Kind, value: Value | undefined): readonly number[] {
	return value === undefined ? [] : kind.numbers(value);
}

/** Whether the value of a limit is worked from this name. */
export function restsOnKey({ from }: Limit, key: string): boolean {
	return Object.keys(unitLimit(from).value.needs).some(
		(name) => (from.names[name] ?? name) === key
	);
}
