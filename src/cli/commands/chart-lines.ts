import type { Drawing } from '../../lib/engine/figures/drawing.ts';
import { columns } from './columns.ts';

/** A chart that stands on a task as its figure, as lines of text; none where the figure is no chart. */
export function chartLines({ isChart, shapes }: Drawing): string[] {
	if (!isChart) return [];
	const words = shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));
	const cells = words.filter(({ anchor }) => anchor === 'middle');
	const notes = words.filter(({ anchor }) => anchor !== 'middle');
	const across = places(cells.map(({ x }) => x));
	const rows = places(cells.map(({ y }) => y)).map((y) =>
		across.map((x) => cells.find((cell) => cell.x === x && cell.y === y)?.text ?? '')
	);
	return [
		columns(rows.map(([first = '', ...others]) => [`  ${first}`, ...others])),
		...notes.map(({ text }) => `  ${text}`)
	];
}

function places(all: readonly number[]): number[] {
	return [...new Set(all)].sort((one, other) => one - other);
}
