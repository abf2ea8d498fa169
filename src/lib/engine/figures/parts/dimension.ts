import { path, polyline, segment, type Shape, text, type TextShape, widthOf } from '../drawing.ts';

const arrow = 7;

export function head(x: number, y: number, dx: number, dy: number): Shape {
	// A closed arrowhead, 7 long and 5 wide, pointing along (dx, dy).
	const [bx, by] = [x - dx * arrow, y - dy * arrow];
	const [px, py] = [-dy * 2.5, dx * 2.5];
	return path(
		polyline(
			[
				[x, y],
				[bx + px, by + py],
				[bx - px, by - py]
			],
			true
		),
		'dim',
		'dye'
	);
}

interface DimensionNotes {
	/** Where the label stands when the space between the arrows is too narrow for it. */
	labelAt?: 'between' | 'after' | 'before';
}

/**
 * A horizontal dimension from x1 to x2, its line at `y`, with extension lines from `from` (the y
 * of the feature).
 */
export function dimensionAcross(
	x1: number,
	x2: number,
	y: number,
	from: number | readonly [number, number],
	label: string,
	{ labelAt = 'between' }: DimensionNotes = {}
): Shape[] {
	const [from1, from2] = typeof from === 'number' ? [from, from] : from;
	const [left, right] = x1 < x2 ? [x1, x2] : [x2, x1];
	const [fromLeft, fromRight] = x1 < x2 ? [from1, from2] : [from2, from1];
	const wide = right - left > 2 * arrow + 6;
	const past = y > fromLeft ? 4 : -4;
	const gap = y > fromLeft ? 3 : -3;
	const shapes: Shape[] = [
		segment(left, fromLeft + gap, left, y + past, 'dim'),
		segment(right, fromRight + gap, right, y + past, 'dim')
	];
	if (wide) {
		shapes.push(segment(left, y, right, y, 'dim'), head(left, y, -1, 0), head(right, y, 1, 0));
	} else {
		shapes.push(
			segment(left - 18, y, left, y, 'dim'),
			segment(right, y, right + 18, y, 'dim'),
			head(left, y, 1, 0),
			head(right, y, -1, 0)
		);
	}
	shapes.push(acrossLabel(left, right, y, label, wide, labelAt));
	return shapes;
}

function acrossLabel(
	left: number,
	right: number,
	y: number,
	label: string,
	wide: boolean,
	labelAt: 'between' | 'after' | 'before'
): TextShape {
	const fits = widthOf(label) < right - left - 4;
	if (labelAt === 'before') return text(left - (wide ? 4 : 22), y + 4, label, { anchor: 'end' });
	if (labelAt === 'after' || !fits) return text(right + (wide ? 4 : 22), y + 4, label);
	return text((left + right) / 2, y - 4, label, { anchor: 'middle' });
}

/**
 * A vertical dimension from y1 to y2, its line at `x`, with extension lines from `from`. Where the
 * space between the arrows is narrow, the label may stand below it, and nowhere above `least`.
 */
export function dimensionDown(
	y1: number,
	y2: number,
	x: number,
	from: number | readonly [number, number],
	label: string,
	{ narrow = 'between', least = -Infinity }: { narrow?: 'between' | 'below'; least?: number } = {}
): Shape[] {
	const [from1, from2] = typeof from === 'number' ? [from, from] : from;
	const [top, bottom] = y1 < y2 ? [y1, y2] : [y2, y1];
	const [fromTop, fromBottom] = y1 < y2 ? [from1, from2] : [from2, from1];
	const past = x > fromTop ? 4 : -4;
	const gap = x > fromTop ? 3 : -3;
	const right = x > fromTop;
	const shapes: Shape[] = [
		segment(fromTop + gap, top, x + past, top, 'dim'),
		segment(fromBottom + gap, bottom, x + past, bottom, 'dim')
	];
	const wide = bottom - top > 2 * arrow + 4;
	if (wide) {
		shapes.push(segment(x, top, x, bottom, 'dim'), head(x, top, 0, -1), head(x, bottom, 0, 1));
	} else {
		shapes.push(
			segment(x, top - 16, x, top, 'dim'),
			segment(x, bottom, x, bottom + 16, 'dim'),
			head(x, top, 0, 1),
			head(x, bottom, 0, -1)
		);
	}
	const y = wide || narrow === 'between' ? (top + bottom) / 2 + 4 : bottom + 16;
	shapes.push(
		text(right ? x + 6 : x - 6, Math.max(y, least), label, { anchor: right ? 'start' : 'end' })
	);
	return shapes;
}

/** A note with a line that points at (x, y) from (fromX, fromY), where the words stand. */
export function leader(x: number, y: number, fromX: number, fromY: number, label: string): Shape[] {
	const length = Math.hypot(x - fromX, y - fromY) || 1;
	const [dx, dy] = [(x - fromX) / length, (y - fromY) / length];
	const left = fromX < x;
	return [
		segment(fromX, fromY, x, y, 'dim'),
		head(x, y, dx, dy),
		text(left ? fromX - 4 : fromX + 4, fromY + 4, label, { anchor: left ? 'end' : 'start' })
	];
}
