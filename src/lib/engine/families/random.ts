import alea from 'seedrandom/lib/alea.js';

/** Chance for drawing a task: whole numbers and picks only, the same in every browser. */
export interface Random {
	/** A whole number from `low` to `high`, both included. */
	int(low: number, high: number): number;
	pick<T>(list: readonly T[]): T;
	/** `count` different members, in the order of the list. */
	some<T>(list: readonly T[], count: number): T[];
}

/** @throws Error on an empty seed, which seedrandom would take for no seed at all. */
export function randomFrom(seed: string): Random {
	if (seed === '') throw new Error('empty seed');
	const next = alea(seed);
	const below = (limit: number) => Math.floor(((next.int32() >>> 0) / 2 ** 32) * limit);
	const pick = <T>(list: readonly T[]): T => {
		const picked = list[below(list.length)];
		if (picked === undefined) throw new Error('nothing to pick from');
		return picked;
	};
	return {
		int: (low, high) => low + below(high - low + 1),
		pick,
		some: (list, count) => {
			const left = list.map((_, i) => i);
			while (left.length > count) left.splice(below(left.length), 1);
			return list.filter((_, i) => left.includes(i));
		}
	};
}
