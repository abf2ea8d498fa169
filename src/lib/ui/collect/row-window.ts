/** Which rows of a long table are drawn, and how high what is left out above and below is. */
export interface RowWindow {
	readonly from: number;
	readonly to: number;
	/** In pixels. */
	readonly above: number;
	readonly below: number;
}

/** Rows drawn beyond what is in sight, at either end. */
const spare = 6;

/** Tables up to so many rows are drawn whole. */
export const drawnWhole = 60;

/**
 * @param scrolled how far the table is scrolled, in pixels
 * @param seen height of what is in sight, in pixels
 * @param row height of a row, in pixels
 */
export function rowWindow(rows: number, scrolled: number, seen: number, row: number): RowWindow {
	if (rows <= drawnWhole) return { from: 0, to: rows, above: 0, below: 0 };
	const from = Math.max(0, Math.floor(scrolled / row) - spare);
	const to = Math.min(rows, Math.ceil((scrolled + seen) / row) + spare);
	return { from, to, above: from * row, below: (rows - to) * row };
}
