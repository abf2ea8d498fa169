import type { Hole } from '$lib/engine/panel/holes.ts';
import type { PanelPlan } from '$lib/engine/panel/plan.ts';

/*
 * The panel on the screen: pixels for inches, and what is written at its dimension lines.
 */

/** Room round the panel for dimensions, in pixels. */
export const room = { left: 60, right: 8, top: 6, bottom: 56 } as const;

export interface Frame {
	/** Pixels an inch. */
	readonly scale: number;
	readonly width: number;
	readonly height: number;
	x(inches: number): number;
	/** Up on the panel is up on the screen. */
	y(inches: number): number;
}

export function frameFor(plan: PanelPlan, width: number, mostHeight: number): Frame {
	const { length, width: across } = plan.job;
	const scale = Math.max(
		Math.min(
			(width - room.left - room.right) / length,
			(mostHeight - room.top - room.bottom) / across
		),
		0.01
	);
	return {
		scale,
		width,
		height: across * scale + room.top + room.bottom,
		x: (inches) => room.left + inches * scale,
		y: (inches) => room.top + (across - inches) * scale
	};
}

/** A stretch of a dimension line and what stands at it; empty where there is no room. */
export interface Span {
	readonly from: number;
	readonly to: number;
	readonly label: string;
}

/** The places of members one after the other, from the reference edge to the far edge. */
export function chain(
	places: readonly number[],
	end: number,
	scale: number,
	write: (inches: number) => string
): Span[] {
	const inside = places.filter((one) => one > 0 && one < end).sort((a, b) => a - b);
	const stops = [0, ...inside, end];
	return stops.slice(1).map((to, i) => {
		const from = stops[i] ?? 0;
		const label = write(to - from);
		return { from, to, label: (to - from) * scale > label.length * 8 + 14 ? label : '' };
	});
}

/** The hole nearest to a place, not farther than `most` inches. */
export function holeAt(
	holes: readonly Hole[],
	x: number,
	y: number,
	most: number
): Hole | undefined {
	let [nearest, least]: [Hole | undefined, number] = [undefined, most];
	for (const hole of holes) {
		const away = Math.hypot(hole.x - x, hole.y - y);
		if (away <= least) [nearest, least] = [hole, away];
	}
	return nearest;
}
