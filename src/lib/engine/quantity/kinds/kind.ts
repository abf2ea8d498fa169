import type { Exact } from '../exact.ts';
import type { Reading, ReadValue } from '../reading.ts';
import type { Dimension } from '../units.ts';
import type { LengthUnit, Value } from '../value.ts';
import type { Mistakes } from './mistakes.ts';
import type { OptionRules } from './option-rules.ts';

/** The values of a task that a kind may look at beside the one it judges, by key. */
export type Known = Readonly<Record<string, unknown>>;

/** An answer that was read: exact, in base units. */
export interface Entry<R = ReadValue> {
	readonly value: R;
	/** Half of the last place typed, in base units; 0 for fractions, counts and names. */
	readonly grain: number;
	/** The letter behind a factor that stands for a size: `D` for `2 D`. */
	readonly times?: string;
}

/** A value for scripts: numbers with their unit, words as they are, lists as lists. */
export type Plain =
	| string
	| { readonly number: number; readonly unit: string }
	| { readonly count: number; readonly of: Plain }
	| readonly Plain[];

/**
 * How an answer stands to the right value.
 *
 * - `right`: within the tolerance, or as good as the best
 * - `off`: another value
 * - `miscounted`: not as many values as are wanted; `part` where all of them are right ones
 * - `partial`: only a part of what is wanted, and what to write
 * - `not-best`: it holds, but a better one is possible
 * - `breaks`: it cannot be made as it stands
 */
export type Judgement =
	| { readonly is: 'right' }
	| { readonly is: 'off' }
	| {
			readonly is: 'miscounted';
			readonly wanted: number;
			readonly got: number;
			readonly part?: true;
	  }
	| { readonly is: 'partial'; readonly says: string }
	| { readonly is: 'not-best'; readonly says: string }
	| { readonly is: 'breaks'; readonly says: string };

/**
 * How near a typed number must be to a value to be taken for it: `rounded` allows for a last
 * digit lost to rounding on the way, and for a fraction read off a rule; `exact` only for the
 * places typed; `very` for nothing but floating point.
 */
export type Nearness = 'rounded' | 'exact' | 'very';

/**
 * What a kind is asked once something was answered. Pages fetch it later than what draws a task, with
 * what methods tell (answers/later.ts).
 */
export interface KindAnswers<V extends Value, R extends ReadValue> {
	/** How an answer stands to the right value; `known` are the task's values by key. */
	judge(entry: Entry<R>, right: V, tolerance: Exact, known?: Known): Judgement;
	/** Whether an answer is this value as somebody would write it. */
	isWritten(entry: Entry<R>, value: V, nearness?: Nearness): boolean;
	/** The answer as a value to work on with, shaped like the right one; null when it cannot be. */
	toValue(entry: Entry<R>, right?: V): V | null;
	/** The entry with every number multiplied, for trying other units. */
	scaled(entry: Entry<R>, factor: Exact): Entry<R>;
	/** The value inside a formula, without unit or name, as MathML. */
	mathml(value: V, units?: LengthUnit): string;
}

/**
 * A kind of result: all that is special about values of one sort, so that nothing else asks for
 * the type of a value. The build checks that a step and its slips give values of the step's kind;
 * a kind may therefore take its own values for granted.
 *
 * Methods are written as methods, not as function properties, so that a kind of numbers can stand
 * where any kind is wanted.
 */
export interface Kind<V extends Value = Value, R extends ReadValue = ReadValue> extends KindAnswers<
	V,
	R
> {
	/** Names the kind in messages of the build. */
	readonly id: string;
	readonly dimension: Dimension;
	/** `a rivet length`: what is wanted. */
	readonly noun: string;
	/** What may be typed, in one short line. */
	readonly hint: string;
	/** The keyboard that fits: numbers with a point, or letters. */
	readonly keys: 'decimal' | 'text';
	/** The words to choose from; empty where it is no choice. */
	readonly choices: readonly string[];
	/** The kind of one member of a list; of anything else, the kind itself. */
	readonly member: Kind;
	readonly isList: boolean;
	/** The most its numbers may be, and what is said when they are more. */
	readonly most: { readonly limit: number; readonly says: string } | null;
	/** Parts of the base unit that a shop carries results to from step to step: 1000. */
	readonly fine: number;
	readonly mistakes: Mistakes;
	readonly options: OptionRules<V>;

	/** How an answer may be written: `−5 or 5/16 in`. */
	example(units?: LengthUnit): string;
	/** What was typed; never throws. `units` is what a bare length is in. */
	read(text: string, units?: LengthUnit): Reading<R>;
	/** The same with arithmetic worked out; never rejects. */
	work(text: string, units?: LengthUnit): Promise<Reading<R>>;

	/** Whether two values are apart by more than `room`, in base units. */
	differs(one: V, other: V, room: number): boolean;
	/** Whether every number in the value is finite. */
	isSound(value: V): boolean;
	/** Every number in the value; none in words. */
	numbers(value: V): readonly number[];
	/** The value with every number changed, by its place among `numbers`; words stay. */
	map(value: V, change: (one: number, place: number) => number): V;
	/** The members of a list; any other value alone. */
	members(value: V): readonly Value[];

	/** The value as the shop writes it, with its unit. */
	write(value: V, units?: LengthUnit): string;
	/** The value to the nearest 64th, for layout with a scale: `≈ 23/32 in`; empty when it is one. */
	nearest64(value: V, units?: LengthUnit): string;
	/** The value for scripts. */
	plain(value: V): Plain;
}
