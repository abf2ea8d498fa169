import type { Area, Cutout, Member, PanelJob } from './job.ts';

/*
 * Distances on the panel, in inches.
 */

export interface Point {
	readonly x: number;
	readonly y: number;
}

/** Room for floating point. */
export const slack = 1e-9;

/** From a point to the outline of a rectangle: above zero inside, below zero outside. */
export function inside({ x, y, length, width }: Area, point: Point): number {
	const dx = Math.min(point.x - x, x + length - point.x);
	const dy = Math.min(point.y - y, y + width - point.y);
	return dx >= 0 && dy >= 0 ? Math.min(dx, dy) : -Math.hypot(Math.min(dx, 0), Math.min(dy, 0));
}

/** From a point to the edge of a rectangle with round corners. */
export function insideRounded(area: Area, radius: number, point: Point): number {
	const plain = inside(area, point);
	if (radius <= 0 || plain < 0) return plain;
	const dx = Math.min(point.x - area.x, area.x + area.length - point.x);
	const dy = Math.min(point.y - area.y, area.y + area.width - point.y);
	if (dx >= radius || dy >= radius) return plain;
	return radius - Math.hypot(radius - dx, radius - dy);
}

/** From a point to the rim of an opening; below zero inside it. */
export function clearOf(cutout: Cutout, point: Point): number {
	if (!cutout.round) return -inside(cutout, point);
	return Math.hypot(point.x - cutout.x, point.y - cutout.y) - cutout.diameter / 2;
}

/** The flange of a member against the panel. */
export function flangeOf({ runs, at, flange, from, to }: Member): Area {
	const [side, run] = [at - flange / 2, to - from];
	return runs === 'across'
		? { x: side, y: from, length: flange, width: run }
		: { x: from, y: side, length: run, width: flange };
}

/** A point of a row by its place along the row and the row's place across. */
export function pointOn(runs: Member['runs'], along: number, at: number): Point {
	return runs === 'across' ? { x: at, y: along } : { x: along, y: at };
}

/**
 * Where along a line an opening is nearer than `room`: begin and end, or null.
 *
 * @param at the line's place across
 */
export function blockedBy(
	cutout: Cutout,
	runs: Member['runs'],
	at: number,
	room: number
): readonly [number, number] | null {
	const [across, along] = runs === 'across' ? (['x', 'y'] as const) : (['y', 'x'] as const);
	if (cutout.round) {
		const reach = cutout.diameter / 2 + room;
		const off = Math.abs(at - cutout[across]);
		if (off >= reach - slack) return null;
		const half = Math.sqrt(reach ** 2 - off ** 2);
		return [cutout[along] - half, cutout[along] + half];
	}
	const [wide, long] =
		runs === 'across' ? [cutout.length, cutout.width] : [cutout.width, cutout.length];
	const off = Math.max(cutout[across] - at, at - cutout[across] - wide, 0);
	if (off >= room - slack && off > 0) return null;
	const half = Math.sqrt(Math.max(room ** 2 - off ** 2, 0));
	return [cutout[along] - half, cutout[along] + long + half];
}

/** The part of the panel that stays flat: inside its edges, or the bend tangent lines. */
export function flatPart(
	{ length, width }: Pick<PanelJob, 'length' | 'width'>,
	setbacks: Readonly<Record<'left' | 'right' | 'bottom' | 'top', number>>
): Area {
	const { left, right, bottom, top } = setbacks;
	return { x: left, y: bottom, length: length - left - right, width: width - bottom - top };
}
