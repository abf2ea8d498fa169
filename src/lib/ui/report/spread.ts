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

/** Round marks for a scale, 0 and the most among them. */
export function ticksTo(most: number): number[] {
	const step = [1, 2, 4, 5, 10, 20, 25, 50, 100].find((one) => most / one <= 8) ?? most;
	const ticks = Array.from({ length: Math.floor(most / step) + 1 }, (_, i) => i * step);
	return most % step === 0 ? ticks : [...ticks.filter((tick) => most - tick >= step / 2), most];
}
