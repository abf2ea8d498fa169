/** What to do with a driven rivet, by its shop head. */
export const headJudgements = ['accept', 'drive more', 'replace'] as const;

/** A size measured on a head, between the least and the most it may be. */
interface Measured {
	readonly size: number;
	readonly least: number;
	readonly most: number;
}

/**
 * Judges a shop head by its width and height. Driving on spreads a head and flattens it, so it
 * only helps one that is too narrow or too high, and neither too wide nor too flat.
 */
export function judgedHead(width: Measured, height: Measured): string {
	const spent = width.size > width.most || height.size < height.least;
	if (spent) return 'replace';
	const unfinished = width.size < width.least || height.size > height.most;
	return unfinished ? 'drive more' : 'accept';
}
