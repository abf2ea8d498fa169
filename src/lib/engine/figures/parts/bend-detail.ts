import { type Shape, widthOf } from '../drawing.ts';
import { metal, type Section, section } from './bent.ts';
import { insideRadius, moldLines } from './bent-notes.ts';
import { dimensionDown } from './dimension.ts';
import { across, both, down } from '../size.ts';

/** One bend, inches and degrees from flat, with the lettering of its radius and thickness. */
interface Bend {
	readonly R: number;
	readonly T: number;
	readonly angle: number;
	/** Without a label for R the radius is not lettered. */
	readonly labels: { readonly R?: string; readonly T: string };
	/** The bend that sets the scale, where it is not this one. */
	readonly like?: Omit<Bend, 'labels' | 'like'> | undefined;
}

/** How far the mold lines reach past the bend, in inches, as the section has it. */
function reach({ R, T, angle }: Omit<Bend, 'labels' | 'like'>): number {
	return section({ R, T, flats: [1, 1], bends: [angle] }, 1).corners[0]?.setback ?? R + T;
}

/** A single bend drawn large, its legs cut short, with radius, thickness and mold lines. */
export function bendDetail(bend: Bend): { part: Section; shapes: Shape[] } {
	const { R, T, angle, labels, like = bend } = bend;
	const scale = Math.min(both(72) / (like.R + like.T), both(130) / reach(like));
	// The first leg has room for lettering above it.
	const legs = [Math.max(across(128), 50 + widthOf(labels.R ?? '')), down(76)];
	const flats = legs.map((leg) => leg / scale);
	const part = section({ R, T, flats, bends: [angle] }, scale);
	const corner = part.corners[0];
	return {
		part,
		shapes: [
			metal(part),
			...moldLines(part),
			...(corner && labels.R ? insideRadius(part, corner, labels.R) : []),
			...dimensionDown(-part.T / 2, part.T / 2, -24, 0, labels.T)
		]
	};
}
