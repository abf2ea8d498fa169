/** One day, or the first and the last of several in a row. */
export interface DayRange {
	readonly from: number;
	readonly to: number;
}

/** Days in order, those in a row taken together. */
export function rangesOf(days: readonly number[]): DayRange[] {
	const ranges: DayRange[] = [];
	for (const day of [...new Set(days)].sort((a, b) => a - b)) {
		const last = ranges.at(-1);
		if (last && day === last.to + 1) ranges[ranges.length - 1] = { ...last, to: day };
		else ranges.push({ from: day, to: day });
	}
	return ranges;
}

/** Every day of a range. */
export function daysIn({ from, to }: DayRange): number[] {
	return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}
