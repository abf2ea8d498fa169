import { formatNumber } from '../../quantity/format.ts';
import type { Style } from '../../quantity/kind.ts';

/** A number as printed with so many decimal places. */
export function places(count: number): (value: number) => string {
	return (value) => value.toFixed(count);
}

/** A number as the shop writes it, without its unit. */
export function inStyle(style: Style): (value: number) => string {
	return (value) => formatNumber(value, style);
}

export function asPrinted(value: number | string): string {
	return String(value);
}
