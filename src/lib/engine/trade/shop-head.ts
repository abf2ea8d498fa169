/** What to do with a driven rivet, by its shop head. */
export const headJudgements = ['accept', 'drive more', 'replace'] as const;

/**
 * Size of the wanted shop head of a rivet, inches: 1.5 D across and 0.5 D high, of a D rivet 1.4 D
 * and 0.6 D (FAA-H-8083-31B, ch. 4, p. 4-32, Fig. 4-76). For drawing a joint that is only shown.
 *
 * @param letters of the rivet's alloy
 */
export function wantedHead(
	D: number,
	letters = 'AD'
): { readonly across: number; readonly high: number } {
	return letters === 'D' ? { across: 1.4 * D, high: 0.6 * D } : { across: 1.5 * D, high: 0.5 * D };
}
