/** Diameters of the rivets in the bins, FAA-H-8083-31B, ch. 4, Fig. 4-90; the larger ones follow. */
const inBins = [3 / 32, 1 / 8, 5 / 32, 3 / 16, 1 / 4, 5 / 16, 3 / 8];

/** The first one in the bins that is not under `least`. */
export function rivetFor(least: number): number {
	return inBins.find((size) => size >= least - 1e-6) ?? Number.NaN;
}

/** The one in the bins that is nearest. */
export function nearestRivet(to: number): number {
	const gap = (size: number) => Math.abs(size - to);
	return inBins.reduce((best, size) => (gap(size) < gap(best) - 1e-9 ? size : best));
}

/** So many bins further up, or down. */
export function rivetBeside(size: number, bins: number): number {
	return inBins[inBins.indexOf(size) + bins] ?? Number.NaN;
}
