/** Where a student's head stands: `level` counts up from the scale. */
export interface Head {
	readonly code: string;
	readonly at: number;
	readonly level: number;
}

/** Heads in columns as wide as one, so that none covers another. */
export function rowsOf(
	counts: readonly { readonly marks: number; readonly codes: readonly string[] }[],
	x: (marks: number) => number,
	head: number
): Head[] {
	const heights = new Map<number, number>();
	return counts.flatMap(({ marks, codes }) =>
		codes.map((code) => {
			const column = Math.round(x(marks) / head);
			const level = heights.get(column) ?? 0;
			heights.set(column, level + 1);
			return { code, at: x(marks), level };
		})
	);
}

/** Round marks for a scale that holds all from the least somebody had to the most there are. */
export function ticksFor(least: number, most: number): number[] {
	const step = [1, 2, 4, 5, 10, 20, 25, 50, 100].find((one) => (most - least) / one <= 8) ?? most;
	const from = Math.max(0, Math.floor(least / step) - 1);
	const inner = Array.from({ length: Math.ceil(most / step) - from }, (_, i) => (from + i) * step);
	return [...inner.filter((tick) => most - tick >= step / 2), most];
}
