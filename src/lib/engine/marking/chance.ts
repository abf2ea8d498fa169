import { Exact } from '../quantity/exact.ts';
import type { Value } from '../quantity/value.ts';
import type { Entry, Kind } from '../quantity/kinds/kind.ts';

/**
 * How many of these values an entry would be near by chance alone, were it drawn from about its
 * own size. Words and lists are hardly hit by chance.
 */
export function chanceOf(kind: Kind, entry: Entry, reached: readonly Value[]): number {
	const typed = kind.isList ? null : kind.toValue(entry);
	if (typeof typed !== 'number' || typed === 0) return 0;
	const [least, most] = [typed / 1.5, typed * 1.5];
	const near = reached.filter(
		(value): value is number => typeof value === 'number' && value > least && value < most
	);
	const unlike = new Set(near.map((value) => value.toFixed(6)));
	return (unlike.size * spacing(kind, entry)) / (most - least);
}

/** How far apart numbers of the entry's sort are: the last place typed, or the parts of a rule. */
function spacing({ fine, mistakes }: Kind, { value, grain }: Entry): number {
	// Whole numbers are not rounded.
	if (mistakes.coarse.length === 0) return 1;
	const onRule = value instanceof Exact && 64n % value.d === 0n;
	if (onRule) return 1 / Math.max(16, Number(value.d));
	return 2 * Math.max(grain, 0.1 / fine);
}
