import { source } from './source.ts';

/** Least pitch in a row, in rivet diameters, by the head and the rows of a joint. */
const least = {
	protruding: { 1: 3, 2: 4, 3: 3 },
	countersunk: { 1: 3.5, 2: 4.5, 3: 3.5 }
} as const;
export const leastPitchSource = source('airframe', 'ch. 4, p. 4-34, Fig. 4-80');

/**
 * Least pitch, inches.
 *
 * @param D rivet diameter, inches
 */
export function leastPitch(head: keyof typeof least, rows: 1 | 2 | 3, D: number): number {
	return least[head][rows] * D;
}

/** Least distance between any two rivets, in rivet diameters. */
export const leastApart = 3;
export const leastApartSource = source('airframe', 'ch. 4, pp. 4-33, 4-34');

/** Greatest pitch, in rivet diameters. */
export const greatestPitch = 10;
export const greatestPitchSource = source('airframe', 'ch. 4, p. 4-34');
