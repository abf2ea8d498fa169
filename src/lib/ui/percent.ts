/** A share, 0 to 1, in whole percent: `86 %`. */
export function percent(share: number): string {
	return `${Math.round(share * 100)}\u00a0%`;
}
