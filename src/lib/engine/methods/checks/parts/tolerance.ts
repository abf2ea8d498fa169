import { fraction } from '../../../quantity/kinds.ts';
import { type CheckText, keep } from '../../../solver/checked.ts';
import { given } from '../../../solver/given.ts';
import { atLeast, atMost } from '../../../solver/write.ts';

/** No handbook prints how near a cut or a bend must come: the drawing does. */
export const tolerance = given(fraction, 'Tolerance of the drawing, either way');

interface Within {
	readonly what: string;
	/** The step whose skill is behind it. */
	readonly behind: string;
	readonly short: string;
	readonly long: string;
}

/** A size within the drawing's tolerance, either way. */
export function within(size: string, wanted: string, told: Within): CheckText[] {
	const notes = { what: told.what, rule: 'drawing.tolerance' };
	return [
		keep(
			atLeast(size, `${wanted} - tolerance`, `Under the tolerance.`, notes),
			told.behind,
			told.short
		),
		keep(
			atMost(size, `${wanted} + tolerance`, `Over the tolerance.`, notes),
			told.behind,
			told.long
		)
	];
}
