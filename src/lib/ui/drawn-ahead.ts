import type { Box, Drawing } from '$lib/engine/figures/drawing.ts';
import { type Fitted, fitted, type Room } from '$lib/engine/figures/fit.ts';

/** Drawings that were made before they are shown, each for the place where it will stand. */
const ahead = new WeakMap<() => Drawing, { room: Room; made: Fitted }>();

/** Makes a drawing that rests on nothing that may change. */
export function drawAhead(draw: () => Drawing, room: Room): void {
	ahead.set(draw, { room, made: fitted(draw, room) });
}

/** The room that a drawing was made for before it is shown. */
export function roomAhead(draw: () => Drawing): Room | null {
	return ahead.get(draw)?.room ?? null;
}

/** The drawing for a place, as it was made before or made now. */
export function drawnFor(draw: () => Drawing, room: Room, box?: () => Box): Fitted {
	const known = ahead.get(draw);
	const same = known?.room.width === room.width && known.room.height === room.height;
	return known && same && !box ? known.made : fitted(draw, room, box);
}
