import { nearest64 } from '$lib/engine/quantity/sixty-fourths.ts';

/** A place as it is laid out: decimals and the nearest 64th, `1.268 (≈ 1 17/64)`. */
export function placeText(inches: number): string {
	return `${inches.toFixed(3)} (${nearest64(inches)})`;
}

/** Key of a hole for its ticks: numbers of holes move when the panel is changed. */
export function placeKey({ x, y }: { readonly x: number; readonly y: number }): string {
	return `${x.toFixed(3)} ${y.toFixed(3)}`;
}
