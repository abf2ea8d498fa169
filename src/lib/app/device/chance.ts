import type { Below } from '../practice/run.ts';

/** Chance as the browser gives it. */
export const below: Below = (limit) => {
	const [word = 0] = crypto.getRandomValues(new Uint32Array(1));
	return Math.floor((word / 2 ** 32) * limit);
};
