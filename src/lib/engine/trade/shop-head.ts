/** What to do with a driven rivet, by its shop head. */
export const headJudgements = ['accept', 'drive more', 'replace'] as const;

/** Sizes nearer to a limit than this are on it, and a limit itself is allowed. */
const slack = 1e-9;

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
	const spent = over(width.size, width.most) || over(height.least, height.size);
	if (spent) return 'replace';
	const unfinished = over(width.least, width.size) || over(height.size, height.most);
	return unfinished ? 'drive more' : 'accept';
}

function over(size: number, limit: number): boolean {
	return size > limit + slack;
}
