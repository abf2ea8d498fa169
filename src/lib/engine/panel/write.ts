import { fraction, length } from '../quantity/kinds.ts';

/** Millionths of an inch, which hold every 64th: what tables and drawings of a plan are rounded to. */
export function rounded(value: number): number {
	const whole = Math.round(value * 1e6) / 1e6;
	return whole === 0 ? 0 : whole;
}

/** `3/8 in`, or decimals where it is no 64th. */
export function inchesText(value: number): string {
	return fraction.write(rounded(value));
}

/** Decimal inches: `0.032 in`. */
export function gaugeText(value: number): string {
	return length.write(rounded(value));
}
