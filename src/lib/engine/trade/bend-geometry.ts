import { TradeError } from '../solver/trade-function.ts';

/**
 * K for setback: the tangent of half the bend angle, in degrees from flat, to nine places so that
 * K of 90 is 1. Throws a `TradeError` at and beyond 0 and 180 degrees, where the mold lines do not
 * meet; the K chart (airframe handbook, ch. 4, p. 4-60, Fig. 4-122) has no value there either.
 */
export function setbackK(angle: number): number {
	if (angle === 180) {
		throw new TradeError(
			'A bend of 180° has no setback, because its mold lines never meet: lay it out by its flats and its bend allowance.'
		);
	}
	if (!(angle > 0 && angle < 180)) {
		throw new TradeError('A bend angle counts from flat and lies between 0° and 180°.');
	}
	return Math.round(Math.tan((angle * Math.PI) / 360) * 1e9) / 1e9;
}

/** Bend allowance in inches by the handbook formula, (0.01743 R + 0.0078 T) N, N in degrees. */
export function bendAllowance(R: number, T: number, angle: number): number {
	return (0.01743 * R + 0.0078 * T) * angle;
}

/**
 * The setbacks that come off each leg: one at the end of the part, two between bends. Throws a
 * `TradeError` unless there is one leg more than there are bends.
 */
export function atEachLeg(atBends: readonly number[], legs: readonly number[]): readonly number[] {
	if (legs.length !== atBends.length + 1) {
		throw new TradeError(
			`A part has one leg more than it has bends: give ${atBends.length + 1} legs for ${atBends.length} ${atBends.length === 1 ? 'bend' : 'bends'}, or the right number of bends.`
		);
	}
	return legs.map((_, leg) => (atBends[leg - 1] ?? 0) + (atBends[leg] ?? 0));
}
