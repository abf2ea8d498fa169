import { table } from '../learning/markdown.ts';

/** One measured figure beside the most it should be. */
export interface Figure {
	readonly what: string;
	readonly value: number;
	readonly unit: string;
	/** Target; a figure without one is told only. */
	readonly most?: number;
}

/** Prints a table of figures, each with its target and whether it was met. */
export function report(title: string, how: string, figures: readonly Figure[]): void {
	const rows = figures.map(({ what, value, unit, most }) => [
		what,
		`${rounded(value)} ${unit}`.trim(),
		most === undefined ? '' : `≤ ${rounded(most)} ${unit}`.trim(),
		most === undefined ? '' : value <= most ? 'met' : '**missed**'
	]);
	console.log(`\n## ${title}\n\n${how}\n\n${table(['', 'measured', 'target', ''], rows)}`);
}

function rounded(value: number): string {
	return Math.abs(value) < 20 ? value.toFixed(value % 1 === 0 ? 0 : 2) : value.toFixed(0);
}

/** The value below which `share` of them lie, 0 to 1; the nearest that was measured. */
export function quantile(values: readonly number[], share: number): number {
	const sorted = [...values].sort((a, b) => a - b);
	return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
}

export function median(values: readonly number[]): number {
	return quantile(values, 0.5);
}
