export type { Entry } from '../quantity/kinds/kind.ts';

/**
 * Why an answer is off.
 *
 * - `slip`: one or two known slips of the method lead to exactly this number
 * - `either`: slips in different steps lead to it, and the number alone cannot tell which
 * - `other-step`: it is the right result of another step
 * - `unit`: the right number in another unit, or read on another scale; the id of a slip that the
 *   kind of the step knows
 * - `rounding`: the right number, rounded too coarsely at the end or on the way
 * - `digits`: the right digits with the point or two neighbours misplaced
 * - `order`: not as many values as are wanted
 * - `breaks`: it cannot be made as it stands, and why
 * - `unknown`: it cannot be told; the steps will show it
 */
export type Cause =
	| { readonly kind: 'slip'; readonly slips: readonly string[]; readonly also?: string }
	| { readonly kind: 'either'; readonly slips: readonly string[] }
	| { readonly kind: 'other-step'; readonly step: string }
	| { readonly kind: 'unit'; readonly unit: string }
	| { readonly kind: 'rounding'; readonly how: 'end' | 'way' | 'cut' }
	| { readonly kind: 'digits'; readonly how: 'point' | 'swapped' }
	| { readonly kind: 'order'; readonly wanted: number; readonly got: number }
	| { readonly kind: 'breaks'; readonly says: string }
	| { readonly kind: 'unknown' };

/**
 * - `accept`: right; `carried` when it follows from an earlier wrong answer of the student's
 *   own, so that one slip is charged once
 * - `holds`: it can be made as it stands, but a better one is possible
 * - `rework`: not right, with the cause
 */
export type Verdict =
	| { readonly kind: 'accept'; readonly carried: boolean }
	| { readonly kind: 'holds'; readonly says: string }
	| { readonly kind: 'rework'; readonly cause: Cause };

/** The verdict on every step that was answered, by step key. */
export type Verdicts = Readonly<Record<string, Verdict>>;
