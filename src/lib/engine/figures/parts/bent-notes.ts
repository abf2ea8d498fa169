import { path, polyline, type Shape, text } from '../drawing.ts';
import { alignedDimension, beside } from './aligned-dimension.ts';
import { along, arc, type Corner, type Point, type Section } from './bent.ts';
import { head, leader } from './dimension.ts';

/** The outside faces drawn on to the mold point of every bend. */
export function moldLines({ corners }: Section): Shape[] {
	return corners.map(({ before, turn, moldPoint, setback }) => {
		const [first, second] = [
			along(moldPoint, before, -setback),
			along(moldPoint, before + turn, setback)
		] as const;
		return path(polyline([first, moldPoint, second]), 'thin');
	});
}

/** The bend tangent lines of a bend, from its centre through the metal. */
export function tangentLines({ centre, before, turn }: Corner, length: number): Shape[] {
	const out = before - Math.sign(turn) * 90;
	return [out, out + turn].map((heading) =>
		path(polyline([centre, along(centre, heading, length)]), 'thin')
	);
}

/** A dimension of a leg between its mold lines, on the outside of the bend next to it. */
export function legDimension(part: Section, i: number, offset: number, label: string): Shape[] {
	const leg = part.legs[i];
	if (!leg) throw new Error(`no leg: ${i}`);
	const before = part.corners[i - 1];
	const after = part.corners[i];
	// In the first half of a part the bend behind a leg has its outside free, then the one before it.
	const near = (i <= (part.legs.length - 1) / 2 ? after : before) ?? after ?? before;
	const out = leg.heading - Math.sign(near?.turn ?? 1) * 90;
	const face = (point: Point, by: number) => along(along(point, leg.heading, by), out, part.T / 2);
	return alignedDimension(
		face(leg.from, -(before?.setback ?? 0)),
		face(leg.to, after?.setback ?? 0),
		out,
		offset,
		label
	);
}

/** The bend angle: from the first leg drawn on past the mold point round to the second. */
export function angleFromFlat({ before, turn, moldPoint }: Corner, label: string): Shape[] {
	// A narrow angle needs a wider arc for the lettering to stand clear of the metal.
	const radius = Math.abs(turn) < 40 ? 54 : 32;
	return [
		path(polyline([along(moldPoint, before, 4), along(moldPoint, before, radius + 14)]), 'thin'),
		...angleArc(moldPoint, radius, before, before + turn, label)
	];
}

/** The setback of a bend, below its first leg: from the tangent line to the mold point. */
export function setbackDimension(corner: Corner): Shape[] {
	const { before, turn, moldPoint, setback } = corner;
	const out = before - Math.sign(turn) * 90;
	return alignedDimension(along(moldPoint, before, -setback), moldPoint, out, 26, 'setback');
}

/** Beyond the tangent lines, and beyond the inside of the bend where the metal is thick. */
function arcRadius({ R, T }: Section, { turn, setback }: Corner): number {
	const inside = (R + T) / Math.cos(((turn / 2) * Math.PI) / 180) - R;
	return Math.max(setback + 26, inside + 12);
}

/** The angle between the legs, inside the bend, from face to face. */
export function angleBetween(part: Section, corner: Corner, label: string): Shape[] {
	const { T } = part;
	const { before, turn, moldPoint } = corner;
	const radius = arcRadius(part, corner);
	// The arc starts and ends on the inside faces, a thickness in from the mold lines.
	const inset = (Math.asin(Math.min(1, T / radius)) * 180) / Math.PI;
	const side = Math.sign(turn);
	return angleArc(
		moldPoint,
		radius,
		before + turn + side * inset,
		before + side * (180 - inset),
		label
	);
}

/** The metal of a bend along its middle, with its name. */
export function allowanceArc(
	{ R, T }: Section,
	{ centre, before, turn }: Corner,
	label: string
): Shape[] {
	const out = before - Math.sign(turn) * 90;
	const [x, y] = along(centre, out + turn * 0.3, R + T / 2);
	return [
		path(polyline(arc(centre, R + T / 2, out, out + turn)), 'centre'),
		...leader(x, y, x - 34, y + T / 2 + 40, label)
	];
}

function angleArc(centre: Point, radius: number, from: number, to: number, label: string): Shape[] {
	const points = arc(centre, radius, from, to);
	const turned = Math.sign(to - from);
	// Arrowheads are straight: turned in by 6 degrees, they lie on the arc.
	const [startX, startY] = along(centre, from, radius);
	const [endX, endY] = along(centre, to, radius);
	const [sx, sy] = along([0, 0], from - turned * 84, 1);
	const [ex, ey] = along([0, 0], to + turned * 84, 1);
	return [
		path(polyline(points), 'dim'),
		head(startX, startY, sx, sy),
		head(endX, endY, ex, ey),
		beside(along(centre, (from + to) / 2, radius), (from + to) / 2, label)
	];
}

/** The inside radius of a bend whose first leg lies level, lettered above that leg. */
export function insideRadius({ R }: Section, { centre, turn }: Corner, label: string): Shape[] {
	const [x, y] = along(centre, -90 + Math.min(turn / 2, 40), R);
	const floor = centre[1] + R;
	// In a closed bend the lettering moves out to where the legs stand far enough apart.
	const room = turn > 90 ? 26 / Math.tan(((180 - turn) * Math.PI) / 180) : 0;
	return leader(x, y, centre[0] - Math.max(10, room), floor - Math.max(14, R * 0.5), label);
}

/**
 * The same where the angle between the legs is drawn: lettered beyond its arc, as long as the legs stand
 * far enough apart; null where they do not.
 */
export function radiusBeyondArc(part: Section, corner: Corner, label: string): Shape[] | null {
	const { centre, turn, moldPoint } = corner;
	if (turn > 105) return null;
	const [x, y] = along(centre, -90 + Math.min(turn / 2, 40), part.R);
	return leader(x, y, moldPoint[0] - arcRadius(part, corner) - 8, centre[1] + part.R - 24, label);
}

/** A line of lettering under a figure. */
export function note(x: number, y: number, words: string): Shape {
	return text(x, y, words, { tone: 'soft', anchor: 'middle' });
}
