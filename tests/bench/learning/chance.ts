import alea from 'seedrandom/lib/alea.js';

/** Seeded chance for the hidden learners. */
export interface Chance {
	/** Uniform in 0..1. */
	uniform(): number;
	/** Standard normal. */
	normal(): number;
}

export function chanceOf(seed: string): Chance {
	const uniform = alea(seed);
	const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
	return { uniform, normal };
}
