import { source } from './source.ts';
import { cellAt, columnOf, rowOf } from './table/reading.ts';
import { rivetPitches } from './tables/rivet-pitches.ts';

export const leastPitchSource = rivetPitches.source;

/**
 * Least pitch, inches, by the head and the rows of a joint.
 *
 * @param D rivet diameter, inches
 */
export function leastPitch(head: 'protruding' | 'countersunk', rows: 1 | 2 | 3, D: number): number {
	return cellAt(rivetPitches, rowOf(rivetPitches, rows), columnOf(rivetPitches, head)) * D;
}

/** Least distance between any two rivets, in rivet diameters. */
export const leastApart = 3;
export const leastApartSource = source('airframe', 'ch. 4, pp. 4-33, 4-34');

/** Greatest pitch, in rivet diameters. */
export const greatestPitch = 10;
export const greatestPitchSource = source('airframe', 'ch. 4, p. 4-34');
