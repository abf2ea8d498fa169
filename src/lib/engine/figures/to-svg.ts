import { escaped } from '../solver/markup.ts';
import { type Box, type Drawing, type Shape, type TextShape, widthOf } from './drawing.ts';

export const margin = 8;

/** Drawing units are shown a little larger than pixels, so that lettering is 16 pixels high. */
const enlarged = 1.35;

/**
 * SVG text of a drawing. It scales to the width it is given; colours come from classes, so the
 * page's theme applies. All words are escaped.
 *
 * @param box what is shown of it, where drawings that follow each other must not jump
 * @param pixels of a drawing unit
 */
export function toSvg(drawing: Drawing, box = boundsOf(drawing.shapes), pixels = enlarged): string {
	const left = Math.floor(box.left - margin);
	const top = Math.floor(box.top - margin);
	const width = Math.ceil(box.right + margin) - left;
	const height = Math.ceil(box.bottom + margin) - top;
	const shapes = drawing.shapes.map(shapeText).join('');
	const title = escaped(drawing.title);
	const shown = Math.round(width * pixels);
	return `<svg class="figure" viewBox="${left} ${top} ${width} ${height}" width="${shown}" role="img" aria-label="${title}">${shapes}</svg>`;
}

function shapeText(shape: Shape): string {
	if (shape.kind === 'path') {
		return `<path class="l-${shape.line} f-${shape.fill}" d="${shape.d}"/>`;
	}
	const { x, y, anchor, tone, turn, text } = shape;
	const turned = turn === 0 ? '' : ` transform="rotate(${turn} ${r(x)} ${r(y)})"`;
	return `<text class="t-${tone}" x="${r(x)}" y="${r(y)}" text-anchor="${anchor}"${turned}>${escaped(text)}</text>`;
}

function r(value: number): string {
	return String(Math.round(value * 100) / 100);
}

/** The box that holds every shape, lettering included. */
export function boundsOf(shapes: readonly Shape[]): Box {
	const boxes = shapes.map((shape) => (shape.kind === 'text' ? textBox(shape) : pathBox(shape.d)));
	return {
		left: Math.min(...boxes.map((box) => box.left)),
		top: Math.min(...boxes.map((box) => box.top)),
		right: Math.max(...boxes.map((box) => box.right)),
		bottom: Math.max(...boxes.map((box) => box.bottom))
	};
}

export function textBox({ x, y, text, anchor, turn }: TextShape): Box {
	const width = widthOf(text);
	const before = anchor === 'start' ? 0 : anchor === 'middle' ? width / 2 : width;
	if (Math.abs(turn) === 90) {
		const up = turn < 0;
		const top = up ? y - (width - before) : y - before;
		return { left: up ? x - 10 : x - 3, right: up ? x + 3 : x + 10, top, bottom: top + width };
	}
	return { left: x - before, right: x - before + width, top: y - 10, bottom: y + 3 };
}

/**
 * Bounds of a path's end points; arcs here never reach past their ends by more than a radius. Fitting
 * a drawing into its place asks for many of these.
 */
function pathBox(d: string): Box {
	const box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
	for (
		let from = 0, to = nextCommand(d, 1);
		from < d.length;
		from = to, to = nextCommand(d, to + 1)
	) {
		const ySpace = d.lastIndexOf(' ', to);
		if (ySpace <= from) continue;
		const xSpace = d.lastIndexOf(' ', ySpace - 1);
		const x = Number(d.slice(Math.max(from, xSpace) + 1, ySpace));
		const y = Number(d.slice(ySpace + 1, to));
		const radius = d[from] === 'A' ? reach(d.slice(from + 1, to)) : 0;
		box.left = Math.min(box.left, x);
		box.right = Math.max(box.right, x);
		box.top = Math.min(box.top, y - radius);
		box.bottom = Math.max(box.bottom, y + radius);
	}
	return box;
}

/** Where the next letter of path text stands, from a place on: numbers and spaces sort before letters. */
function nextCommand(d: string, from: number): number {
	let at = from;
	while (at < d.length && d.charCodeAt(at) <= 57) at++;
	return at;
}

/** How far an arc may reach past its ends: its radius, where it is the larger part of its circle. */
function reach(arc: string): number {
	const [radius, , , isLarge] = arc.split(' ');
	return isLarge === '1' ? Number(radius) : 0;
}
