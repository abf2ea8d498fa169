import {
	type Box,
	circle,
	type Fill,
	type Line,
	path,
	polyline,
	segment,
	type Shape
} from '../drawing.ts';

/* Sheet seen from above, with the holes and rivet heads in it. All sizes in drawing units. */

type Point = readonly [number, number];

export type Side = 'left' | 'right';

/** A plate with some of its sides broken off, because the metal goes on beyond the drawing. */
export function plate(
	{ left, top, right, bottom }: Box,
	fill: Fill = 'metal-a',
	broken: readonly Side[] = []
): Shape[] {
	const leftSide = sideLine(left, bottom, top, broken.includes('left'));
	const rightSide = sideLine(right, top, bottom, broken.includes('right'));
	return [
		path(polyline([...leftSide, ...rightSide], true), 'none', fill),
		path(polyline(leftSide), broken.includes('left') ? 'thin' : 'edge'),
		path(polyline(rightSide), broken.includes('right') ? 'thin' : 'edge'),
		segment(left, top, right, top),
		segment(left, bottom, right, bottom)
	];
}

/** One side of a plate; a broken one has a kink in the middle. */
function sideLine(x: number, from: number, to: number, broken: boolean): Point[] {
	if (!broken)
		return [
			[x, from],
			[x, to]
		];
	const middle = (from + to) / 2;
	const down = Math.sign(to - from);
	return [
		[x, from],
		[x, middle - 7 * down],
		[x + 5 * down, middle - 2 * down],
		[x - 5 * down, middle + 2 * down],
		[x, middle + 7 * down],
		[x, to]
	];
}

/** A round feature with crossed centre lines: a hole, or a rivet head when filled as one. */
export function roundFeature(
	x: number,
	y: number,
	radius: number,
	fill: Fill = 'paper',
	line: Line = 'edge'
): Shape[] {
	const arm = radius + 4;
	return [
		circle(x, y, radius, fill, line),
		segment(x - arm, y, x + arm, y, 'centre'),
		segment(x, y - arm, x, y + arm, 'centre')
	];
}
