/** The middle one, or the mean of the two in the middle; `up` from the least, not empty. */
export function median(up: readonly number[]): number {
	const half = up.length >> 1;
	const [low = 0, high = 0] = up.length % 2 ? [up[half], up[half]] : up.slice(half - 1);
	return (low + high) / 2;
}
