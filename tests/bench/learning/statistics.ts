/** A mean and its standard error, in points of a hundred. */
export interface Estimate {
	readonly mean: number;
	readonly error: number;
}

export function estimate(shares: readonly number[]): Estimate {
	const n = shares.length;
	const mean = shares.reduce((sum, x) => sum + x, 0) / n;
	const squares = shares.reduce((sum, x) => sum + (x - mean) ** 2, 0);
	return { mean: 100 * mean, error: 100 * Math.sqrt(squares / (n - 1) / n) };
}

/** Difference learner by learner: both lists are of the same learners in the same order. */
export function difference(ours: readonly number[], theirs: readonly number[]): Estimate {
	return estimate(ours.map((x, i) => x - (theirs[i] ?? NaN)));
}

export const plain = ({ mean, error }: Estimate): string =>
	`${mean.toFixed(1)} ±${error.toFixed(1)}`;

/** Points with their sign. */
export const points = (mean: number): string =>
	`${mean < 0 ? '−' : '+'}${Math.abs(mean).toFixed(1)}`;

export const signed = ({ mean, error }: Estimate): string => `${points(mean)} ±${error.toFixed(1)}`;
