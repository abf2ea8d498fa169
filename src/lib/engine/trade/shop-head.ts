/** What to do with a driven rivet, by its shop head. */
export const headJudgements = ['accept', 'drive more', 'replace'] as const;

/**
 * Size of the wanted shop head of a rivet, inches: 1.5 D across, 0.5 D high (FAA-H-8083-31B, ch. 4,
 * p. 4-32, Fig. 4-76). For drawing a joint that is only shown.
 */
export function wantedHead(D: number): { readonly across: number; readonly high: number } {
	return { across: 1.5 * D, high: 0.5 * D };
}
