import { type Line, type Move, path, polyline, type Shape } from '../drawing.ts';

/*
 * A bent sheet in section, to scale. It is walked along the middle of the metal from its first
 * edge; headings are in degrees, 0 to the right and 90 up the page.
 */

export type Point = readonly [number, number];

/** A bent sheet: lengths in inches, bends in degrees from flat, above zero when turned left. */
export interface BentSheet {
	readonly R: number;
	readonly T: number;
	readonly flats: readonly number[];
	readonly bends: readonly number[];
}

/** A flat of the section, along the middle of the metal. */
export interface Leg {
	readonly from: Point;
	readonly to: Point;
	readonly heading: number;
}

/** A bend of the section. */
export interface Corner {
	/** Centre of the inside radius. */
	readonly centre: Point;
	/** Where the mold lines meet. */
	readonly moldPoint: Point;
	/** Heading of the leg before it, and the bend angle with its sign. */
	readonly before: number;
	readonly turn: number;
	/** From the mold point to the bend tangent lines. */
	readonly setback: number;
}

/** A bent sheet on paper, in drawing units. */
export interface Section {
	readonly R: number;
	readonly T: number;
	readonly outline: readonly Point[];
	readonly legs: readonly Leg[];
	readonly corners: readonly Corner[];
	/** How it is bent up, for its motion. */
	readonly move: Move;
}

const rad = Math.PI / 180;

/** The point `distance` from another in the direction of a heading. */
export function along([x, y]: Point, heading: number, distance: number): Point {
	return [x + distance * Math.cos(heading * rad), y - distance * Math.sin(heading * rad)];
}

/** Points of an arc about `centre`, from one heading to another. */
export function arc(centre: Point, radius: number, from: number, to: number): Point[] {
	const parts = Math.max(2, Math.ceil(Math.abs(to - from) / 6));
	return Array.from({ length: parts + 1 }, (_, i) =>
		along(centre, from + ((to - from) * i) / parts, radius)
	);
}

/** Walks a sheet at `scale` units an inch, its first edge at 0, 0. */
export function section(sheet: BentSheet, scale: number, start = 0): Section {
	const [R, T] = [sheet.R * scale, sheet.T * scale];
	const legs: Leg[] = [];
	const corners: Corner[] = [];
	const leftFace: Point[] = [];
	const rightFace: Point[] = [];
	let at: Point = [0, 0];
	let heading = start;
	sheet.flats.forEach((flat, i) => {
		const to = along(at, heading, flat * scale);
		legs.push({ from: at, to, heading });
		for (const end of [at, to]) {
			leftFace.push(along(end, heading + 90, T / 2));
			rightFace.push(along(end, heading - 90, T / 2));
		}
		at = to;
		const turn = sheet.bends[i];
		if (turn === undefined || turn === 0) return;
		const corner = cornerAt(at, heading, turn, R, T);
		corners.push(corner);
		// On a bend to the left the left face is the inside one.
		const side = Math.sign(turn);
		const [leftRadius, rightRadius] = side > 0 ? [R, R + T] : [R + T, R];
		const out = heading - side * 90;
		leftFace.push(...arc(corner.centre, leftRadius, out, out + turn));
		rightFace.push(...arc(corner.centre, rightRadius, out, out + turn));
		at = along(corner.centre, out + turn, R + T / 2);
		heading += turn;
	});
	const move: Move = { kind: 'bent', sheet, scale, start };
	return { R, T, legs, corners, outline: [...leftFace, ...rightFace.reverse()], move };
}

function cornerAt(at: Point, heading: number, turn: number, R: number, T: number): Corner {
	const side = Math.sign(turn);
	const setback = Math.tan((Math.min(Math.abs(turn), 179) / 2) * rad) * (R + T);
	const outside = along(at, heading - side * 90, T / 2);
	return {
		centre: along(at, heading + side * 90, R + T / 2),
		moldPoint: along(outside, heading, setback),
		before: heading,
		turn,
		setback
	};
}

/** The metal of a section. */
export function metal({ outline, move }: Section): Shape {
	return { ...path(polyline(outline, true), 'edge', 'metal-a'), move };
}

/** Only the outline of a section, for the part as it was wanted. */
export function outlineOf({ outline }: Section, line: Line = 'hidden'): Shape {
	return path(polyline(outline, true), line);
}

/** Units an inch at which a sheet is no larger than `width` by `height`. */
export function scaleToFit(sheet: BentSheet, width: number, height: number, start = 0): number {
	const { outline } = section(sheet, 1, start);
	const xs = outline.map(([x]) => x);
	const ys = outline.map(([, y]) => y);
	const across = Math.max(...xs) - Math.min(...xs);
	const high = Math.max(...ys) - Math.min(...ys);
	return Math.min(width / Math.max(across, 1e-6), height / Math.max(high, 1e-6));
}
