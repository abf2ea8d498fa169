import type { Box, Drawing } from './drawing.ts';
import { boundsOf } from './to-svg.ts';

/** A box that holds any of several drawings, so that they are made to one scale in places alike. */
export function boxOfAny(draws: readonly (() => Drawing)[]): Box {
	const boxes = draws.map((draw) => boundsOf(draw().shapes));
	return {
		left: 0,
		top: 0,
		right: Math.max(...boxes.map(({ left, right }) => right - left)),
		bottom: Math.max(...boxes.map(({ top, bottom }) => bottom - top))
	};
}
