import type {
	Box,
	Drawing,
	PathShape,
	TextShape
} from '../../../src/lib/engine/figures/drawing.ts';
import { textBox } from '../../../src/lib/engine/figures/to-svg.ts';

/** A straight piece of a line. */
type Piece = readonly [x1: number, y1: number, x2: number, y2: number];

/**
 * What is wrong with the lettering of a drawing: words on other words, and words with a line through
 * them. Capitals are 9 units high, and a line may touch what is left of the twelve.
 */
export function letteringFaults({ shapes, isChart }: Drawing): string[] {
	const texts = shapes.flatMap((one) => (one.kind === 'text' && one.text ? [one] : []));
	const paths = shapes.flatMap((one) => (one.kind === 'path' ? [one] : []));
	const onWords = texts.flatMap((one, i) =>
		texts
			.slice(i + 1)
			.filter((other) => meet(inked(one), inked(other)))
			.map((other) => `“${one.text}” on “${other.text}”`)
	);
	if (isChart) return onWords;
	const onLines = texts.flatMap((one) =>
		paths
			.filter(({ line }) => line !== 'none')
			.filter((path) => piecesOf(path).some((piece) => crosses(piece, inked(one))))
			.map(({ line }) => `“${one.text}” on a line: ${line}`)
	);
	return [...onWords, ...new Set(onLines)];
}

/** The box of lettering, less what is hardly ever inked. */
function inked(one: TextShape): Box {
	const { left, top, right, bottom } = textBox(one);
	if (one.turn !== 0) return { left: left + 2, top: top + 2, right: right - 2, bottom: bottom - 2 };
	return { left: left + 2, top: top + 2, right: right - 2, bottom: bottom - 3 };
}

function meet(one: Box, other: Box): boolean {
	return (
		one.left < other.right &&
		other.left < one.right &&
		one.top < other.bottom &&
		other.top < one.bottom
	);
}

/** A path as straight pieces: curves by their chords, circles by what they are about. */
function piecesOf({ d }: PathShape): Piece[] {
	const pieces: Piece[] = [];
	let [x, y, startX, startY] = [0, 0, 0, 0];
	for (const part of d.split(/(?=[MLAQZ])/)) {
		const numbers = part.match(/-?\d+(?:\.\d+)?/g)?.map(Number) ?? [];
		const [toX, toY] = part.startsWith('Z') ? [startX, startY] : [numbers.at(-2), numbers.at(-1)];
		if (toX === undefined || toY === undefined) continue;
		if (part.startsWith('M')) [startX, startY] = [toX, toY];
		else if (part.startsWith('A') && numbers[3] === 1) pieces.push(...half(x, y, toX, toY));
		else pieces.push([x, y, toX, toY]);
		[x, y] = [toX, toY];
	}
	return pieces;
}

/** Half a circle from one end of its diameter to the other, the way figures draw them. */
function half(x: number, y: number, toX: number, toY: number): Piece[] {
	const [cx, cy, r] = [(x + toX) / 2, (y + toY) / 2, Math.hypot(toX - x, toY - y) / 2];
	const from = Math.atan2(y - cy, x - cx);
	const at = (i: number) => [cx + r * Math.cos(from + i), cy + r * Math.sin(from + i)] as const;
	return Array.from({ length: 8 }, (_, i) => {
		return [...at((i * Math.PI) / 8), ...at(((i + 1) * Math.PI) / 8)] as const;
	});
}

/** Whether a straight line runs through a box. */
function crosses([x1, y1, x2, y2]: Piece, { left, top, right, bottom }: Box): boolean {
	let [from, to] = [0, 1];
	for (const [start, way, low, high] of [
		[x1, x2 - x1, left, right],
		[y1, y2 - y1, top, bottom]
	] as const) {
		if (way === 0) {
			if (start <= low || start >= high) return false;
			continue;
		}
		const [one, other] = [(low - start) / way, (high - start) / way];
		from = Math.max(from, Math.min(one, other));
		to = Math.min(to, Math.max(one, other));
	}
	return from < to;
}
