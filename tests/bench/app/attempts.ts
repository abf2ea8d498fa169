import type { Attempt } from '../../../src/lib/engine/schedule/event.ts';

/** An attempt without what makes it one of a certain moment. */
export type Sample = Omit<Attempt, 'id' | 'at' | 'day' | 'learner'>;

export const learner = '5a000000-0000-4000-8000-000000000001';

/** The `n`th of `count` attempts, spread evenly over some years up to `until`. */
export function attemptAt(samples: readonly Sample[], n: number, count: number, until: number) {
	const at = Math.floor(until - (count - n) * ((2 * 365 * 86_400_000) / Math.max(count, 1000)));
	const id = `a0000000-0000-4000-8000-${String(n).padStart(12, '0')}`;
	const day = new Date(at).toISOString().slice(0, 10);
	return { ...samples[n % samples.length], id, at, day, learner } as Attempt;
}
