import { type Exact, exactly, mixedText, ratio } from './exact.ts';

/** Whether inches are marked on a scale in 64ths, and not below zero. */
export function isIn64ths({ s, n, d }: Exact): boolean {
	return 64n % d === 0n && (s > 0n || n === 0n);
}

/**
 * Inches as a whole number and a fraction in lowest terms, for displayed mathematics; null when
 * the value is below zero or not in 64ths. The numerator is 0 for a whole number.
 */
export function asFraction(
	value: number
): { whole: number; numerator: number; denominator: number } | null {
	const exact = exactly(value);
	if (!isIn64ths(exact)) return null;
	const { n, d } = exact;
	return { whole: Number(n / d), numerator: Number(n % d), denominator: Number(d) };
}

/** Inches to the nearest 64th, for layout with a scale: `23/32`, or `≈ 23/32` when rounded. */
export function nearest64(value: number): string {
	const exact = exactly(value);
	const rounded = ratio((exact.n * 128n + exact.d) / (exact.d * 2n), 64n);
	const sign = exact.s < 0n && rounded.n !== 0n ? '−' : '';
	return (rounded.equals(exact.abs()) ? '' : '≈ ') + sign + mixedText(rounded);
}
