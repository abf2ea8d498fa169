import type { Shape } from '../../../figures/drawing.ts';
import { type BentSheet, metal, type Section } from '../../../figures/parts/bent.ts';
import { againstWanted } from '../../../figures/parts/wanted.ts';
import type { Outcome, Say } from '../../family.ts';

/** Differences smaller than this do not show on a part, inches. */
const unseen = 0.0036;

/** What an answer makes of a bent part, beside the part that was wanted. */
export interface BentParts {
	readonly wanted: BentSheet;
	readonly got: BentSheet;
	readonly says: string;
	/** Heading of the first leg on paper. */
	readonly start?: number;
	/** What else stands on the part. */
	readonly also?: (part: Section) => readonly Shape[];
}

/** The part that comes out, drawn against the one that was wanted (dashed). */
export function bentOutcome({ wanted, got, says, start = 0, also }: BentParts): Outcome {
	const { part, outline } = againstWanted(got, wanted, start);
	const shapes = [metal(part), ...(also?.(part) ?? []), outline];
	return {
		drawing: { title: `The part as it comes out; dashed, as it is wanted. ${says}`, shapes },
		says
	};
}

/**
 * How far off a leg is, as it would be seen with a rule laid to it: `about 1/16 in too long`. It is
 * coarse, so that it does not give the answer away. Empty when nothing would be seen.
 */
export function offBy(difference: number, say: Say): string {
	const size = Math.abs(difference);
	if (size < unseen) return '';
	const way = difference > 0 ? 'too long' : 'too short';
	const sixteenths = Math.round(size * 16) / 16;
	return sixteenths === 0
		? `less than ${say('R', 1 / 16)} ${way}`
		: `about ${say('R', sixteenths)} ${way}`;
}

/** A setback or its K as it was answered, in a bend whose right setback is known. */
export interface SetbackAnswer {
	readonly R: number;
	readonly T: number;
	readonly angle: number;
	readonly right: number;
	readonly key: string;
	readonly entered: number;
}

/** A setback too small leaves the flats on either side of the bend too long, and the legs with them. */
export function setbackOutcome(answer: SetbackAnswer, say: Say): Outcome {
	const { R, T, angle, right, key, entered } = answer;
	const setback = key === 'K' ? entered * (R + T) : entered;
	const flat = 4 * (R + T);
	const made = flat + right - setback;
	const off = offBy(right - setback, say);
	const named = `With ${say('setback', setback)} for the setback`;
	return bentOutcome({
		wanted: { R, T, flats: [flat, flat], bends: [angle] },
		got: { R, T, flats: [made, made], bends: [angle] },
		says: off
			? `${named}, each leg comes out ${off}.`
			: `${named}, both legs come out to their mold lines.`
	});
}
