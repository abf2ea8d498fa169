import type { Exact } from '../quantity/exact.ts';

/** An answer that was read: exact, in base units. */
export interface Entry {
	readonly value: Exact | string | readonly Exact[];
	/** Half of the last place typed, in base units; 0 for fractions, counts and names. */
	readonly grain: number;
}

/**
 * Why an answer is off.
 *
 * - `slip`: one or two known slips of the method lead to exactly this number
 * - `either`: slips in different steps lead to it, and the number alone cannot tell which
 * - `other-step`: it is the right result of another step
 * - `unit`: the right number in another unit, or read on another scale
 * - `rounding`: the right number, rounded too coarsely at the end or on the way
 * - `digits`: the right digits with the point or two neighbours misplaced
 * - `order`: the right values in another order, or the wrong number of values
 * - `unknown`: it cannot be told; the steps will show it
 */
export type Cause =
	| { readonly kind: 'slip'; readonly slips: readonly string[]; readonly also?: UnitSlip }
	| { readonly kind: 'either'; readonly slips: readonly string[] }
	| { readonly kind: 'other-step'; readonly step: string }
	| { readonly kind: 'unit'; readonly unit: UnitSlip }
	| { readonly kind: 'rounding'; readonly how: 'end' | 'way' | 'cut' }
	| { readonly kind: 'digits'; readonly how: 'point' | 'swapped' }
	| { readonly kind: 'order'; readonly wanted: number; readonly got: number }
	| { readonly kind: 'unknown' };

export type UnitSlip = 'mm-for-inch' | 'inch-for-mm' | 'thousandths' | 'sixteenths' | 'radians';

/**
 * - `accept`: right; `carried` when it follows from an earlier wrong answer of the student's
 *   own, so that one slip is charged once
 * - `rework`: not right, with the cause
 */
export type Verdict =
	| { readonly kind: 'accept'; readonly carried: boolean }
	| { readonly kind: 'rework'; readonly cause: Cause };

/** The verdict on every step that was answered, by step key. */
export type Verdicts = Readonly<Record<string, Verdict>>;
