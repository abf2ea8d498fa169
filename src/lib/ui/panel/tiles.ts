import type { LengthUnit } from '$lib/engine/quantity/value.ts';

/*
 * A drawing at full size over several sheets of paper. A sheet is as large as what Letter and A4
 * have in common inside narrow margins; on it is a window of the panel, and scales to measure.
 */

/** Inches. `bleed` is what is drawn past the window on every side. */
export const sheet = { width: 7.5, height: 10.2, bleed: 0.15 } as const;
export const window = { left: 0.75, top: 0.2, width: 6.5, height: 9.2 } as const;

/** The line to measure, in the unit it is measured with: its length, and a mark every so often. */
export const scales = {
	in: { says: '10 in', unit: 1, length: 10, every: 1 },
	mm: { says: '250 mm', unit: 1 / 25.4, length: 250, every: 10 }
} as const satisfies Record<LengthUnit, object>;

export interface Tile {
	/** Counted from the lower left, row by row. */
	readonly name: string;
	/** Lower left corner of the window on the panel. */
	readonly x: number;
	readonly y: number;
}

/** The sheets that hold a panel with a little room round it, from the lower left, row by row. */
export function tilesFor(length: number, width: number, room = 0.25): Tile[] {
	const columns = Math.ceil((length + 2 * room) / window.width);
	const rows = Math.ceil((width + 2 * room) / window.height);
	return Array.from({ length: columns * rows }, (_, i) => {
		const [column, row] = [i % columns, Math.floor(i / columns)];
		return {
			name: String(i + 1),
			x: column * window.width - room,
			y: row * window.height - room
		};
	});
}
