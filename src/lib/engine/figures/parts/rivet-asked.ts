import { path, polyline, rectangle, segment, type Shape, type Tone } from '../drawing.ts';
import { dimensionAcross, dimensionDown } from './dimension.ts';
import { bentOverRivet, drivenRivet, stackHeight, stackSection } from './joint.ts';
import { manufacturedHead } from './rivet.ts';

/*
 * A rivet through a stack, drawn for a place of a given width, one unit a pixel: as it is asked for,
 * and driven, with the shank dashed as it stood. Lengths come in inches.
 */

/** The joint that is drawn. */
export interface AskedRivet {
	readonly layers: readonly number[];
	/** What is written beside each layer. */
	readonly names: readonly string[];
	readonly D: number;
	/** The diameter as it is said. */
	readonly size: string;
	/** Length that is needed. */
	readonly needed: number;
}

/** What a rivet of some length comes to. */
export interface Driven {
	readonly length: number;
	/** How far it stands out, in D, as it is said. */
	readonly out: string;
	/** The shop head; null where there is no metal for one, `bent` where the shank bends over. */
	readonly head: { readonly across: number; readonly high: number } | 'bent' | null;
	readonly right: boolean;
}

/** A drawing in parts: what stands still, the shank as it was, and what it becomes. */
export interface DrivenDrawing {
	readonly still: readonly Shape[];
	readonly shank: readonly Shape[];
	readonly shopHead: readonly Shape[];
}

/** Width and height of the place, and where things stand in it. */
interface Place {
	readonly width: number;
	readonly height: number;
	readonly left: number;
	readonly right: number;
	readonly top: number;
	/** Widest shank, and longest. */
	readonly across: number;
	readonly long: number;
}

export const places = {
	wide: { width: 744, height: 352, left: 196, right: 566, top: 64, across: 110, long: 232 },
	narrow: { width: 334, height: 168, left: 116, right: 272, top: 38, across: 44, long: 92 }
} as const satisfies Record<string, Place>;

export type PlaceName = keyof typeof places;

/** The rivet before it is driven, its length asked for. */
export function askedRivet(asked: AskedRivet, where: PlaceName): Shape[] {
	const { place, scale, x } = laid(asked, asked.needed, where);
	const { layers, D, needed, size } = asked;
	const [r, bottom, tip] = [(D * scale) / 2, stackHeight(layers, scale), needed * scale];
	const wide = where === 'wide';
	const beside = x + r + (wide ? 36 : 17);
	return moved(place.top, [
		...sheets(asked, place, scale),
		rectangle(x - r, 0, 2 * r, tip, 'rivet'),
		...manufacturedHead(x, 0, r, 'universal'),
		segment(x, -0.85 * r - 12, x, tip + 14, 'centre'),
		...grip(bottom, place),
		...dimensionDown(bottom, tip, beside, [x + r, x + r], wide ? '1.5D for the shop head' : '1.5D'),
		...dimensionDown(0, tip, x - r - (wide ? 40 : 22), [x - r, x - r], 'length ?'),
		...dimensionAcross(x - r, x + r, tip + (wide ? 30 : 22), tip, `D ${size}`)
	]);
}

/** The same rivet of a length of one's own, driven. */
export function drivenAsked(asked: AskedRivet, driven: Driven, where: PlaceName): DrivenDrawing {
	const { length, out, head, right } = driven;
	const { place, scale, x } = laid(asked, Math.max(length, asked.needed), where);
	const { layers, D, needed } = asked;
	const wide = where === 'wide';
	const grip0 = stackHeight(layers, 1);
	const [r, bottom] = [(D * scale) / 2, grip0 * scale];
	const [stood, wanted] = [length * scale, needed * scale];
	const edge = typeof head === 'object' && head ? (head.across * scale) / 2 : r;
	const outline = [
		[x - r, bottom],
		[x - r, stood],
		[x + r, stood],
		[x + r, bottom]
	] as const;
	const rivet = (shapes: Shape[]) => moved(place.top, shapes);
	const shank = [rectangle(x - r, bottom, 2 * r, Math.max(1, stood - bottom), 'rivet')];
	return {
		still: rivet([
			...sheets(asked, place, scale),
			rectangle(x - r, 0, 2 * r, Math.min(bottom, stood), 'rivet'),
			...manufacturedHead(x, 0, r, 'universal'),
			...grip(bottom, place),
			...(stood > bottom ? [path(polyline(outline), 'hidden')] : []),
			...dimensionDown(
				bottom,
				wanted,
				x - edge - 26,
				[x - r, x - r],
				wide ? '1.5D wanted' : '1.5D'
			),
			...(stood > bottom
				? toned(right ? 'accept' : 'rework', [
						...dimensionDown(
							bottom,
							stood,
							x + edge + 22,
							[x + r, x + r],
							wide ? `${out}D stood out` : `${out}D`
						)
					])
				: [])
		]),
		shank: rivet(stood > bottom ? shank : []),
		shopHead: rivet(becomes(driven, { x, D, grip: grip0, r, bottom, stood }, scale))
	};
}

interface Shank {
	readonly x: number;
	readonly D: number;
	readonly grip: number;
	readonly r: number;
	readonly bottom: number;
	readonly stood: number;
}

/** What the shank becomes when it is driven. */
function becomes({ head, length }: Driven, shank: Shank, scale: number): Shape[] {
	const { x, D, grip: grip0, r, bottom, stood } = shank;
	if (head === null) {
		return stood > bottom ? [rectangle(x - r, bottom, 2 * r, stood - bottom, 'rivet')] : [];
	}
	// The rivet as joints draw it, less what stands still above.
	const whole =
		head === 'bent'
			? bentOverRivet(x, D, grip0, length - grip0, scale)
			: drivenRivet(x, D, grip0, head, scale);
	return whole.slice(-2);
}

function laid({ D }: AskedRivet, longest: number, where: PlaceName) {
	const place: Place = places[where];
	const scale = Math.min(place.across / D, place.long / longest);
	return { place, scale, x: (place.left + place.right) / 2 };
}

function sheets({ layers, names }: AskedRivet, { left, right }: Place, scale: number): Shape[] {
	return shifted(left, stackSection({ layers, names, width: right - left, scale }));
}

function grip(bottom: number, { right, width }: Place): Shape[] {
	return dimensionDown(0, bottom, right + (width > 500 ? 30 : 18), right, 'grip');
}

/** Shapes moved to the right: only `M` and `L` points, as sheets and their notes have them. */
function shifted(by: number, shapes: readonly Shape[]): Shape[] {
	return shapes.map((shape) =>
		shape.kind === 'text'
			? { ...shape, x: shape.x + by }
			: { ...shape, d: moveData(shape.d, by, 0) }
	);
}

function moved(by: number, shapes: readonly Shape[]): Shape[] {
	return shapes.map((shape) =>
		shape.kind === 'text'
			? { ...shape, y: shape.y + by }
			: { ...shape, d: moveData(shape.d, 0, by) }
	);
}

/** Path text moved; every point of it is absolute, and arcs have theirs last. */
function moveData(d: string, dx: number, dy: number): string {
	return d.replace(/([MLQA])([^MLQAZ]*)/g, (_, letter: string, points: string) => {
		const numbers = (points.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);
		const from = letter === 'A' ? 5 : 0;
		const at = numbers.map((n, i) => (i < from ? n : n + ((i - from) % 2 === 0 ? dx : dy)));
		return letter + at.map((n) => Math.round(n * 100) / 100).join(' ');
	});
}

/** Dimension shapes in the colour of a verdict. */
function toned(tone: Tone, shapes: readonly Shape[]): Shape[] {
	return shapes.map((shape) => (shape.kind === 'text' ? { ...shape, tone } : shape));
}
