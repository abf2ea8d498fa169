import { path, polyline, segment, type Shape, text, type TextShape } from '../drawing.ts';
import { along, type Point } from './bent.ts';
import { head } from './dimension.ts';

/**
 * A dimension of the length from one point to another, its line `offset` away from them in the
 * direction of the heading `out`; the label stands level beside it.
 */
export function alignedDimension(
	from: Point,
	to: Point,
	out: number,
	offset: number,
	label: string
): Shape[] {
	const [a, b] = [along(from, out, offset), along(to, out, offset)];
	const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
	const [dx, dy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
	const narrow = length < 22;
	const way = narrow ? -1 : 1;
	const shapes: Shape[] = [
		between(along(from, out, 3), along(from, out, offset + 4)),
		between(along(to, out, 3), along(to, out, offset + 4)),
		head(a[0], a[1], -dx * way, -dy * way),
		head(b[0], b[1], dx * way, dy * way)
	];
	if (narrow) {
		shapes.push(
			segment(a[0] - dx * 16, a[1] - dy * 16, a[0], a[1], 'dim'),
			segment(b[0], b[1], b[0] + dx * 16, b[1] + dy * 16, 'dim')
		);
	} else {
		shapes.push(between(a, b));
	}
	return [...shapes, beside([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], out, label)];
}

function between(a: Point, b: Point): Shape {
	return path(polyline([a, b]), 'dim');
}

/** Lettering beside a point, on the side that the heading points to. */
export function beside(at: Point, heading: number, label: string): TextShape {
	const [x, y] = along(at, heading, 6);
	const across = Math.cos((heading * Math.PI) / 180);
	const up = Math.sin((heading * Math.PI) / 180);
	// The baseline goes down by what half the lettering, or all of it, needs to clear the point.
	const anchor = across > 0.4 ? 'start' : across < -0.4 ? 'end' : 'middle';
	return text(x, y + 4 - up * 4 + (up < -0.7 ? 4 : 0), label, { anchor });
}
