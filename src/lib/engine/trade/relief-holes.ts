import { sameGauge } from './gauges.ts';
import { source } from './source.ts';

/*
 * Least diameter of a relief hole in aluminium sheet, inches, by the thickest sheet that it goes
 * for. The public copy prints 3/160 for the second, which must be 3/16: it is more than the 1/8 for
 * thinner sheet.
 */
const least = [
	{ upTo: 0.064, diameter: 1 / 8 },
	{ upTo: 0.128, diameter: 3 / 16 }
] as const;
export const reliefSource = source('airframe', 'ch. 4, pp. 4-71, 4-72');

/**
 * Diameter of a relief hole, inches: about twice the bend radius, and not under the least for the
 * sheet; null for a sheet that no document tells of.
 *
 * @param radius inside bend radius, inches; the larger one where they differ
 * @param T thickness of the sheet, inches
 */
export function reliefDiameter(radius: number, T: number): number | null {
	const row = least.find(({ upTo }) => sameGauge(T) <= upTo + 1e-9);
	return row ? Math.max(2 * radius, row.diameter) : null;
}
