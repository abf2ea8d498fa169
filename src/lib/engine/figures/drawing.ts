/*
 * A figure is data: shapes on paper, y downwards, in units of which a drawing has a few hundred
 * each way. How lines and fills look is decided by the page's style sheet, through class names.
 */

export type Line =
	| 'edge'
	| 'thin'
	| 'dim'
	| 'marked'
	| 'centre'
	| 'hidden'
	| 'slip'
	| 'slack'
	| 'none';

export type Fill =
	| 'none'
	| 'metal-a'
	| 'metal-b'
	| 'metal-c'
	| 'rivet'
	| 'hatch'
	| 'paper'
	| 'ink'
	| 'dye'
	| 'wash'
	| 'waste';

export type Tone = 'dim' | 'marked' | 'ink' | 'soft' | 'accept' | 'rework';

/**
 * How metal came to stand as it is drawn, for the motion of an outcome.
 *
 * - `driven`: pressed to this shape about a point; `from` is its size before, in parts of that now
 * - `bent`: a sheet bent up from flat, walked at `scale` units an inch from the heading `start`
 * - `cut`: the piece at a place among those cut one after another
 */
export type Move =
	| {
			readonly kind: 'driven';
			readonly about: readonly [x: number, y: number];
			readonly from: readonly [across: number, high: number];
	  }
	| {
			readonly kind: 'bent';
			readonly sheet: {
				readonly R: number;
				readonly T: number;
				readonly flats: readonly number[];
				readonly bends: readonly number[];
			};
			readonly scale: number;
			readonly start: number;
	  }
	| { readonly kind: 'cut'; readonly place: number; readonly of: number };

export interface PathShape {
	readonly move?: Move;
	readonly kind: 'path';
	readonly d: string;
	readonly line: Line;
	readonly fill: Fill;
}

export interface TextShape {
	readonly kind: 'text';
	readonly x: number;
	readonly y: number;
	readonly text: string;
	readonly anchor: 'start' | 'middle' | 'end';
	readonly tone: Tone;
	/** Clockwise turn in degrees about the anchor. */
	readonly turn: number;
}

export type Shape = PathShape | TextShape;

/** A drawing with the sentence that stands for it where it cannot be seen. */
export interface Drawing {
	readonly title: string;
	readonly shapes: readonly Shape[];
	/** Whether it is a part of a chart: lettered with numbers, whatever else is. */
	readonly isChart?: true;
	/** What stands dashed in it, as the end of a sentence. */
	readonly dashed?: string;
}

/** Corners of the smallest upright box round something. */
export interface Box {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
}

function n(value: number): string {
	const rounded = Math.round(value * 100) / 100;
	return Object.is(rounded, -0) ? '0' : String(rounded);
}

/** Path text from points: `M` to the first, `L` to the others. */
export function polyline(points: readonly (readonly [number, number])[], close = false): string {
	const text = points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${n(x)} ${n(y)}`).join('');
	return close ? `${text}Z` : text;
}

export function path(d: string, line: Line = 'edge', fill: Fill = 'none'): PathShape {
	return { kind: 'path', d, line, fill };
}

export function segment(
	x1: number,
	y1: number,
	x2: number,
	y2: number,
	line: Line = 'edge'
): PathShape {
	return path(
		polyline([
			[x1, y1],
			[x2, y2]
		]),
		line
	);
}

export function rectangle(
	x: number,
	y: number,
	width: number,
	height: number,
	fill: Fill = 'none',
	line: Line = 'edge'
): PathShape {
	const [right, bottom] = [x + width, y + height];
	return path(
		polyline(
			[
				[x, y],
				[right, y],
				[right, bottom],
				[x, bottom]
			],
			true
		),
		line,
		fill
	);
}

export function circle(
	x: number,
	y: number,
	radius: number,
	fill: Fill = 'none',
	line: Line = 'edge'
): PathShape {
	const r = n(radius);
	const d = `M${n(x - radius)} ${n(y)}A${r} ${r} 0 1 0 ${n(x + radius)} ${n(y)}A${r} ${r} 0 1 0 ${n(x - radius)} ${n(y)}Z`;
	return path(d, line, fill);
}

/** Width of lettering, which is 12 units high, in drawing units. */
export function widthOf(words: string): number {
	return words.length * 7.3;
}

interface TextNotes {
	anchor?: TextShape['anchor'];
	tone?: Tone;
	turn?: number;
}

export function text(x: number, y: number, words: string, notes: TextNotes = {}): TextShape {
	const { anchor = 'start', tone = 'dim', turn = 0 } = notes;
	return { kind: 'text', x, y, text: words, anchor, tone, turn };
}
