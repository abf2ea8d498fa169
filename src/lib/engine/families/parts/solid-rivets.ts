import type { Random } from '../random.ts';
import type { Level } from '../level.ts';

/** A rivet out of the bin; its dash numbers count 32nds of diameter and 16ths of length. */
export interface SolidRivet {
	readonly head: string;
	readonly alloy: string;
	readonly diameterDash: number;
	readonly lengthDash: number;
}

/** Shortest and longest rivet a bin holds by diameter dash: common practice. */
const bin: Readonly<Record<number, readonly [number, number]>> = {
	3: [3, 8],
	4: [4, 12],
	5: [5, 14],
	6: [6, 18],
	8: [8, 20]
};

/** Shortest and longest rivet of a diameter, as length dashes. */
export function lengthDashes(diameterDash: number): readonly [shortest: number, longest: number] {
	return bin[diameterDash] ?? [4, 8];
}

/** Shortest and longest rivet in a joint of sheets, as length dashes: 2D and 4D, common practice. */
export function jointLengths(diameterDash: number): readonly [shortest: number, longest: number] {
	return [diameterDash, 2 * diameterDash];
}

/** The same of two thin sheets, as a skin on its rib: 1.5D past a grip of 1/8 in or so. */
export function thinLengths(diameterDash: number): readonly [shortest: number, longest: number] {
	return [diameterDash, diameterDash + 1];
}

/**
 * Alloys with the diameters they are bought in: 1100 and 5056 stay small, 2017 and 2024 are
 * usually 3/16 in and larger (NAVEDTRA 14315, ch. 3). Stories that name structure take no 1100.
 */
const bins: Readonly<
	Record<Level, readonly (readonly [alloy: string, dashes: readonly number[]])[]>
> = {
	1: [['2117', [3, 4, 5, 6]]],
	2: [
		['1100', [3, 4]],
		['2117', [3, 4, 5, 6]],
		['5056', [4, 5]],
		['2017', [5, 6]],
		['2024', [5, 6]]
	],
	3: [
		['1100', [3, 4, 5]],
		['2117', [3, 5, 6]],
		['5056', [4, 5, 6]],
		['2017', [6, 8]],
		['2024', [6, 8]]
	]
};

export function solidRivet(random: Random, level: Level): SolidRivet {
	const [alloy, dashes] = random.pick(bins[level]);
	const diameterDash = random.pick(dashes);
	const [shortest, longest] = lengthDashes(diameterDash);
	return {
		head: random.pick(['universal', 'countersunk']),
		alloy,
		diameterDash,
		lengthDash: random.int(level === 3 ? Math.round((shortest + longest) / 2) : shortest, longest)
	};
}
