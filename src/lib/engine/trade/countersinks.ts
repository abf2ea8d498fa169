import { sameGauge } from './gauges.ts';
import { source } from './source.ts';

/*
 * Thinnest sheet for a machine countersink of 100°, inches, by rivet diameter in 32nds. The row of
 * 1/4 in is left out: it is printed as that of 3/16 in, though its head is higher.
 */
const thinnest: ReadonlyMap<number, number> = new Map([
	[3, 0.04],
	[4, 0.05],
	[5, 0.064],
	[6, 0.072]
]);
export const countersinkSource = source('tm9', 'table 4; TM 9-2320-387-24-2, table 33-4');

/**
 * Thinnest sheet that may be machine countersunk for a rivet, inches; null where no document says.
 *
 * @param D rivet diameter, inches
 */
export function thinnestCountersunk(D: number): number | null {
	return thinnest.get(Math.round(D * 32)) ?? null;
}

/** Whether a sheet is thick enough; both gauge series count alike. */
export function canCountersink(thickness: number, least: number): boolean {
	return sameGauge(thickness) >= sameGauge(least) - 1e-9;
}
