import type { NumberKind } from '../../quantity/kinds/measured.ts';

/** A number as printed with so many decimal places. */
export function places(count: number): (value: number) => string {
	return (value) => value.toFixed(count);
}

/** A number as the shop writes it, without its unit or name. */
export function asNumber(kind: NumberKind): (value: number) => string {
	return (value) => kind.number(value);
}

export function asPrinted(value: number | string): string {
	return String(value);
}
