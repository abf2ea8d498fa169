import type { Sample } from './sample.ts';
import type { Part, TradeFunction } from './trade-function.ts';

/**
 * A formula in the making: source for one member, its dimension, and the source of the list it
 * runs along, if any.
 */
export interface Term {
	readonly js: (index: string) => string;
	readonly sample: Sample;
	readonly each: string | null;
	readonly show: readonly Part[];
	/** The names it is worked from. */
	readonly names: readonly string[];
	/** The trade functions it calls. */
	readonly calls: readonly string[];
	/** The cases of a branch. */
	readonly cases?: readonly Case[] | undefined;
}

/** One arm of a branch, and when it holds; the last one holds otherwise. */
export interface Case {
	readonly show: readonly Part[];
	readonly when: readonly Part[] | null;
}

export interface Named {
	readonly sample: Sample;
	readonly list: boolean;
}

export type Names = Readonly<Record<string, Named>>;
export type Functions = Readonly<Record<string, TradeFunction>>;

/** Source for the whole value: along a list, every member in turn. */
export function closed(term: Term): string {
	if (term.each === null) return term.js('0');
	const member = term.js('i');
	return member === `${term.each}[i]` ? term.each : `${term.each}.map((_, i) => ${member})`;
}

/** The names and calls of several terms, each once, and the list they run along. */
export function together(...terms: readonly Uses[]): Uses {
	return {
		each: terms.map(({ each }) => each).find((each) => each !== null) ?? null,
		names: [...new Set(terms.flatMap(({ names }) => names))],
		calls: [...new Set(terms.flatMap(({ calls }) => calls))]
	};
}

export type Uses = Pick<Term, 'each' | 'names' | 'calls'>;
