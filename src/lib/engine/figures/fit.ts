import type { Box, Drawing } from './drawing.ts';
import { type Growth, grownBy } from './size.ts';
import { boundsOf, margin, toSvg } from './to-svg.ts';

/** Where a drawing stands, in pixels. */
export interface Room {
	readonly width: number;
	readonly height: number;
}

/** How high lettering is, in pixels: less only where a place is too small for it. */
const letterings = [13, 12, 11] as const;

/** How far metal may shrink and grow. */
const [least, most] = [0.4, 4];

/** How large a drawing is made for its place, and its pixels a drawing unit. */
export interface Fit {
	readonly growth: Growth;
	readonly pixels: number;
}

/** A drawing as it is made for a place. */
export interface Fitted {
	readonly drawing: Drawing;
	readonly svg: string;
	/** Pixels that it is high: more than the place where that is too low for its lettering. */
	readonly high: number;
}

/**
 * A drawing made for its place: metal fills it, lettering keeps its size.
 *
 * @param box what must find room there, if it is more than the drawing
 */
export function fitted(
	draw: () => Drawing,
	room: Room,
	box = () => boundsOf(draw().shapes)
): Fitted {
	const { growth, pixels } = fitOf(box, room);
	const drawing = grownBy(growth, draw);
	const { top, bottom } = boundsOf(drawing.shapes);
	const high = Math.ceil((bottom - top + 2 * margin) * pixels);
	return { drawing, high, svg: toSvg(drawing, undefined, pixels) };
}

/** @param box the box round what is drawn */
export function fitOf(box: () => Box, { width, height }: Room): Fit {
	for (const lettering of letterings) {
		const pixels = lettering / 12;
		const [wide, high] = [width / pixels - 2 * margin, height / pixels - 2 * margin];
		const fits = (across: number, down: number) => {
			const { left, top, right, bottom } = grownBy({ across, down }, box);
			return right - left <= wide && bottom - top <= high;
		};
		if (!fits(least, least)) continue;
		// First as much both ways; then somewhat more one way only, where no scale is kept.
		const alike = greatest(least, most, (one) => fits(one, one));
		const far = Math.min(most, Math.max(1.2, 1.8 * alike));
		const across = greatest(alike, far, (one) => fits(one, alike));
		const down = greatest(alike, far, (one) => fits(across, one));
		return { growth: { across, down }, pixels };
	}
	return { growth: { across: least, down: least }, pixels: 11 / 12 };
}

/** The greatest growth at which something still fits, where it fits at the least. */
function greatest(least: number, most: number, fits: (growth: number) => boolean): number {
	let [low, high] = [least, most];
	for (let i = 0; i < 6; i++) {
		const middle = Math.sqrt(low * high);
		if (fits(middle)) low = middle;
		else high = middle;
	}
	return low;
}
