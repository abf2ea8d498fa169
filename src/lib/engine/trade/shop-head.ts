/** What to do with a driven rivet, by its shop head. */
export const headJudgements = ['accept', 'drive more', 'replace'] as const;
