import { segment, type Shape, text, widthOf } from '../drawing.ts';
import { across, down } from '../size.ts';

const heading = 15;

/**
 * A printed chart: headings of one or more lines over columns of lettering, with rules between,
 * and notes below.
 */
export function chartTable(
	headings: readonly (readonly string[])[],
	rows: readonly (readonly string[])[],
	notes: readonly string[] = []
): Shape[] {
	// With room to spare the chart stands airier.
	const [row, beside] = [
		Math.max(18, Math.min(down(20), 28)),
		Math.max(8, Math.min(across(10), 40))
	];
	const widths = headings.map((lines, i) => {
		const cells = [...lines, ...rows.map((cells) => cells[i] ?? '')];
		return Math.max(...cells.map(widthOf)) + beside;
	});
	const lefts = widths.map((_, i) => widths.slice(0, i).reduce((sum, one) => sum + one, 0));
	const right = widths.reduce((sum, one) => sum + one, 0);
	const top = Math.max(...headings.map((lines) => lines.length)) * heading + 6;
	const bottom = top + rows.length * row;
	const centre = (i: number) => (lefts[i] ?? 0) + (widths[i] ?? 0) / 2;
	return [
		...headings.flatMap((lines, i) =>
			lines.map((line, n) =>
				cell(centre(i), top - 6 - (lines.length - 1 - n) * heading, line, 'dim')
			)
		),
		...rows.flatMap((cells, n) =>
			cells.map((words, i) =>
				cell(centre(i), top + n * row + row / 2 + 4, words, i === 0 ? 'dim' : 'ink')
			)
		),
		...[top, bottom].map((y) => segment(0, y, right, y)),
		...rows
			.slice(1)
			.map((_, n) => segment(0, top + (n + 1) * row, right, top + (n + 1) * row, 'thin')),
		...lefts.slice(1).map((x) => segment(x, 0, x, bottom, 'thin')),
		...notes.map((words, n) => text(0, bottom + 20 + n * heading, words, { tone: 'soft' }))
	];
}

function cell(x: number, y: number, words: string, tone: 'dim' | 'ink'): Shape {
	return text(x, y, words, { anchor: 'middle', tone });
}
