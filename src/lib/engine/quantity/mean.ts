/** The mean of some numbers, at least one. */
export function mean(all: readonly number[]): number {
	return all.reduce((sum, one) => sum + one, 0) / all.length;
}
