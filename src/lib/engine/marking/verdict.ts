import type { Entry } from '../quantity/kinds/kind.ts';
import type { Method } from '../solver/method.ts';

export type { Entry } from '../quantity/kinds/kind.ts';

/** What was entered, by step key. */
export type Entries = Readonly<Record<string, Entry>>;

/**
 * Why an answer is off.
 *
 * - `slip`: one or two known slips of the method lead to exactly this number
 * - `either`: two or three causes explain it as well, and the sheet alone cannot tell which
 * - `other-step`: it is the right result of another step, an entry typed twice, or a given: its key
 * - `misread`: a given was read or keyed in wrong and worked on with: its key, and how
 * - `factor`: a number to multiply a size by, and not the size that comes out
 * - `unit`: the right number in another unit, or read on another scale; the id of a slip that the
 *   kind of the step knows
 * - `rounding`: the right number, rounded too coarsely at the end or on the way
 * - `digits`: the right digits but for the point, the order of two, or one too few or too many
 * - `order`: the right values of a list, in another order than is asked
 * - `breaks`: it cannot be made as it stands, and why
 * - `unknown`: it cannot be told; the steps will show it, or it is `here`, where all that the step is worked
 *   from is right
 */
export type Cause =
	| SlipCause
	| {
			readonly kind: 'either';
			/** Every slip among the causes. */
			readonly slips: readonly string[];
			/** Left out where each is one of the slips. */
			readonly causes?: readonly Cause[];
	  }
	| OtherStepCause
	| { readonly kind: 'misread'; readonly given: string; readonly how: MisreadHow }
	| { readonly kind: 'factor'; readonly of: string; readonly times: string }
	| { readonly kind: 'unit'; readonly unit: string }
	| { readonly kind: 'rounding'; readonly how: RoundedHow; readonly parts?: number }
	| { readonly kind: 'digits'; readonly how: DigitsHow }
	| { readonly kind: 'order'; readonly how: OrderHow }
	| { readonly kind: 'breaks'; readonly says: string }
	| { readonly kind: 'unknown'; readonly here?: true };

export interface OtherStepCause {
	readonly kind: 'other-step';
	readonly step: string;
	/** Whether its own number stands in that step's field. */
	readonly swapped?: true;
}

export interface SlipCause {
	readonly kind: 'slip';
	readonly slips: readonly string[];
	/** Id of a unit slip made besides. */
	readonly also?: string;
}

/** The point misplaced, two neighbours exchanged, a digit left out or typed twice, or just one that is off. */
export type DigitsHow = 'point' | 'swapped' | 'dropped' | 'doubled' | 'one';

/** The next stocked size up or down, two digits exchanged, or the point misplaced. */
export type MisreadHow = 'larger' | 'smaller' | 'swapped' | 'point' | 'fraction' | 'keyed';

/** From the far end, in any other order, or right at first and then all off by as much. */
export type OrderHow = 'reversed' | 'mixed' | 'shifted';

/**
 * At the end, on the way, cut off instead of rounded, or to a metric scale. `parts` of a cause are
 * the parts of an inch it was read to on a rule.
 */
export type RoundedHow = 'end' | 'way' | 'cut' | 'metric';

/**
 * - `accept`: right; `carried` when it follows from an earlier wrong answer of the student's
 *   own, so that one slip is charged once
 * - `holds`: it can be made as it stands, but a better one is possible
 * - `rework`: not right, with the cause
 * - `unread`: fewer or more values than are wanted, or only a part; it costs nothing
 */
export type Verdict =
	| { readonly kind: 'accept'; readonly carried: boolean }
	| { readonly kind: 'holds'; readonly says: string }
	| { readonly kind: 'rework'; readonly cause: Cause }
	| { readonly kind: 'unread'; readonly says: string };

/** The verdict on every step that was answered, by step key. */
export type Verdicts = Readonly<Record<string, Verdict>>;

/** The most causes that a student is asked to choose among. */
export const mostOffered = 3;

/** What is said where these causes explain an answer equally well. */
export function offered(causes: readonly Cause[]): Cause {
	const [only] = causes;
	if (only && causes.length === 1) return only;
	if (!only || causes.length > mostOffered) return { kind: 'unknown' };
	const slips = causes.flatMap((one) => (one.kind === 'slip' ? one.slips : []));
	const plain = causes.every((one) => one.kind === 'slip' && one.slips.length === 1 && !one.also);
	return { kind: 'either', slips, ...(plain ? {} : { causes }) };
}

/** The causes among which a student is to choose; none where there is no choice. */
export function choicesIn(cause: Cause): readonly Cause[] {
	if (cause.kind !== 'either') return [];
	return cause.causes ?? cause.slips.map((id) => ({ kind: 'slip', slips: [id] }));
}

/** The step in which a slip of the method is made. */
export function stepOfSlip({ slips }: Method, id: string): string {
	return slips[id]?.step ?? '';
}

export function isSeldom({ slips }: Method, id: string): boolean {
	return slips[id]?.rare === true;
}

/** A name for a cause: the same for equal ones. */
export function nameOf(cause: Cause): string {
	return JSON.stringify(cause);
}
