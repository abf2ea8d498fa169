import type { Value } from '../quantity/value.ts';

/** A piece of displayed mathematics: MathML text, or a slot for a named value. */
export type Part = string | Slot;

/** The slot of a named value; a list is written out with `join` between its members. */
export interface Slot {
	readonly name: string;
	readonly join?: string;
	/** Whether an angle stands there as the number of its degrees. */
	readonly bare?: boolean;
}

/**
 * A function that formulas may call besides + − × ÷ and powers.
 *
 * `takes` and `gives` name kinds (`length`, `angle`, `number`, `text`, …). A letter stands for
 * any one dimension (`a, a → a`), `[]` marks a list, and `...` after the last one lets it repeat.
 */
export interface TradeFunction {
	readonly takes: readonly string[];
	readonly gives: string;
	/** Works on numbers in base units; throws a `TradeError` where the trade has no answer. */
	readonly run: (...values: never[]) => Value;
	/** Its displayed form, from the displayed forms of what it is given. */
	readonly show: (shown: readonly (readonly Part[])[]) => Part[];
}

const ErrorWithLimit: ErrorConstructor & { stackTraceLimit?: number } = Error;

/** A look-up or geometry without an answer; the message is one sentence for a person. */
export class TradeError extends Error {
	constructor(message: string) {
		// A slip often ends where a table has no row; recording a stack there would cost more than
		// all the rest of drawing a task, and nobody reads it.
		const held = ErrorWithLimit.stackTraceLimit;
		ErrorWithLimit.stackTraceLimit = 0;
		super(message);
		ErrorWithLimit.stackTraceLimit = held;
	}
}

/** What some work comes to, or null where the trade has no answer. */
export function orNull<T>(work: () => T): T | null {
	try {
		return work();
	} catch (error) {
		if (error instanceof TradeError) return null;
		throw error;
	}
}
