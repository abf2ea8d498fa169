import {
	type Drawing,
	type Fill,
	type Line,
	rectangle,
	type Shape,
	text,
	widthOf
} from '../drawing.ts';
import { dimensionAcross, dimensionDown } from './dimension.ts';
import { both } from '../size.ts';

/** Pieces laid in straight rows from the upper left corner, in inches. */
export interface Grid {
	/** Size of a piece along and across the stock. */
	readonly along: number;
	readonly across: number;
	readonly kerf: number;
	/** Pieces in one row along the stock. */
	readonly columns: number;
	readonly rows: number;
}

interface Look {
	readonly scale: number;
	readonly fill: Fill;
	readonly line: Line;
}

/** Piece number `from` up to but not including `to`, row after row. */
export function gridPieces(
	{ along, across, kerf, columns }: Grid,
	from: number,
	to: number,
	{ scale, fill, line }: Look
): Shape[] {
	const shapes: Shape[] = [];
	for (let i = from; i < to; i++) {
		const x = (i % columns) * (along + kerf);
		const y = Math.floor(i / columns) * (across + kerf);
		const piece = rectangle(x * scale, y * scale, along * scale, across * scale, fill, line);
		shapes.push({ ...piece, move: { kind: 'cut', place: i - from, of: to - from } });
	}
	return shapes;
}

/** Up to `count` pieces that run off the end of the stock, in two more columns at most. */
export function overrun(grid: Grid, count: number, { scale, fill, line }: Look): Shape[] {
	const { along, across, kerf, columns, rows } = grid;
	return Array.from({ length: Math.min(count, 2 * rows) }, (_, i) => {
		const x = (columns + Math.floor(i / rows)) * (along + kerf);
		const y = (i % rows) * (across + kerf);
		return rectangle(x * scale, y * scale, along * scale, across * scale, fill, line);
	});
}

/** A rectangle of metal in inches, with its length and width as they are written. */
export interface Measured {
	readonly length: number;
	readonly width: number;
	readonly labels: readonly [length: string, width: string];
}

/**
 * A stock sheet with one blank below it, both to the same scale.
 *
 * @param like length of the sheet that sets it
 */
export function sheetAndBlank(
	sheet: Measured,
	blank: Measured,
	kerf: string,
	like = sheet.length
): Drawing {
	const scale = both(330) / like;
	const right = sheet.length * scale;
	const bottom = sheet.width * scale;
	const [top, long, wide] = [bottom + 46, blank.length * scale, blank.width * scale];
	return {
		title: 'A stock sheet with one blank below it, to the same scale.',
		shapes: [
			rectangle(0, 0, right, bottom, 'metal-a'),
			text(10, 20, 'stock sheet', { tone: 'ink' }),
			text(right - 10, widthOf(kerf) + 120 > right ? 36 : 20, kerf, { tone: 'ink', anchor: 'end' }),
			...dimensionAcross(0, right, -16, 0, sheet.labels[0]),
			...dimensionDown(0, bottom, right + 16, right, sheet.labels[1]),
			rectangle(0, top, long, wide, 'metal-b'),
			...dimensionAcross(0, long, top - 14, top, blank.labels[0]),
			...dimensionDown(top, top + wide, Math.max(long + 20, 150), long, blank.labels[1]),
			text(0, top + wide + 18, 'one blank', { tone: 'ink' })
		]
	};
}
