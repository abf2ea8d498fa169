import type { Drawing, Shape } from '../../../figures/drawing.ts';
import { type BentSheet, metal, type Section } from '../../../figures/parts/bent.ts';
import { againstWanted } from '../../../figures/parts/wanted.ts';
import type { SeenBy } from '../../family.ts';

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
export function bentMetal({ wanted, got, says, start = 0, also }: BentParts): Drawing {
	const { part, outline } = againstWanted(got, wanted, start);
	return {
		title: `The part as it comes out; dashed, as it is wanted. ${says}`,
		dashed: 'the part as it is wanted',
		shapes: [metal(part), ...(also?.(part) ?? []), outline]
	};
}

interface Bend {
	readonly R: number;
	readonly T: number;
	readonly angle: number;
}

/** A bend between two cut-off legs that each come out `more` longer than wanted. */
export function bothLegsMetal({ at, says }: SeenBy, { R, T, angle }: Bend): Drawing {
	const flat = 4 * (R + T);
	const made = flat + at('more');
	return bentMetal({
		wanted: { R, T, flats: [flat, flat], bends: [angle] },
		got: { R, T, flats: [made, made], bends: [angle] },
		says
	});
}
