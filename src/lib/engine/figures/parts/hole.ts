import { type Fill, rectangle, segment, type Shape } from '../drawing.ts';

/** A sheet in section with a hole at `x`; `width` of sheet from x = 0, its face at `y`. */
export function drilledSheet(
	x: number,
	hole: number,
	sheet: { width: number; y: number; thickness: number; fill?: Fill }
): Shape[] {
	const { width, y, thickness, fill = 'metal-a' } = sheet;
	const left = Math.max(0, x - hole / 2);
	const right = Math.min(width, x + hole / 2);
	return [
		rectangle(0, y, left, thickness, fill),
		rectangle(right, y, width - right, thickness, fill),
		segment(x, y - 10, x, y + thickness + 10, 'centre')
	];
}
