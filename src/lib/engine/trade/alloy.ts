/** An alloy without its temper: `2024` of `2024-T3`. */
export function alloyOf(named: string): string {
	return named.trim().split('-')[0] ?? '';
}
