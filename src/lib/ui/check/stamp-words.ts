/** Day and time as they stand on a printed sheet: `26 Nov 2026, 11:40`. */
export function stampWords(at: number): string {
	return new Date(at).toLocaleString('en-GB', {
		day: 'numeric',
		month: 'short',
		year: 'numeric',
		hour: '2-digit',
		minute: '2-digit'
	});
}
