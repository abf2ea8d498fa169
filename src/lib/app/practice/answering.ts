import type { Check } from '$lib/ui/sheet/task-work.svelte.ts';

/** Longest time counted for one answer, in seconds: a page left open is not practice. */
export const longestSeconds = 600;

/** The steps that one of these checks accepted. */
export function settledIn(checks: readonly Pick<Check, 'verdicts'>[]): string[] {
	return checks.flatMap(({ verdicts }) =>
		Object.keys(verdicts).filter((key) => verdicts[key]?.kind === 'accept')
	);
}
