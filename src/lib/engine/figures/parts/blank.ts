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
import { across, down } from '../size.ts';

/** Width of a strip of trim in a drawing: never to scale. */
const strip = 26;

/** Sides with trim: none, one or both. */
export interface TrimmedSides {
	readonly ends: number;
	readonly edges: number;
}

interface BlankLabels {
	readonly length: string;
	readonly width: string;
	readonly endTrim: string;
	readonly edgeTrim: string;
}

/** The finished part with its trim on the sides that have one: not to scale. */
export function partWithTrim({ ends, edges }: TrimmedSides, labels: BlankLabels): Drawing {
	const [width, height] = [across(250), Math.max(down(96), widthOf(labels.endTrim))];
	const [left, right] = [ends === 2 ? -strip : 0, width + (ends > 0 ? strip : 0)];
	const [top, bottom] = [edges > 0 ? -strip : 0, height + (edges === 2 ? strip : 0)];
	const atEnd = (x: number) =>
		text(x + 4, height / 2, labels.endTrim, { anchor: 'middle', turn: -90 });
	const atEdge = (y: number) => text(width / 2, y + 4, labels.edgeTrim, { anchor: 'middle' });
	return {
		title: `Blank from above: the finished part with trim on ${sides(ends, 'end')} and ${sides(edges, 'long edge')}.`,
		shapes: [
			rectangle(left, top, right - left, bottom - top, 'waste'),
			rectangle(0, 0, width, height, 'metal-a', 'hidden'),
			...[width + strip / 2, -strip / 2].slice(0, ends).map(atEnd),
			...[-strip / 2, height + strip / 2].slice(0, edges).map(atEdge),
			text(width / 2, height / 2 + 4, 'finished part', { anchor: 'middle', tone: 'ink' }),
			...dimensionAcross(0, width, bottom + 24, bottom, labels.length),
			...dimensionDown(0, height, right + 24, right, labels.width),
			text(left, top - 8, 'not to scale', { tone: 'soft' })
		]
	};
}

function sides(count: number, one: string): string {
	return count === 2 ? `both ${one}s` : count === 1 ? `one ${one}` : `no ${one}`;
}

export interface Cut {
	readonly way: 'along' | 'across';
	/** Trimmed sides in this direction. */
	readonly sides: number;
	/** Metal over the finished size, as a part of the trim that is wanted; below 0 it falls short. */
	readonly part: number;
	readonly rough: boolean;
}

/** The finished part on a blank that was cut to a size: the trim is not to scale. */
export function partOnBlank({ way, sides, part, rough }: Cut, label: string): Drawing {
	const along = way === 'along';
	const [size, other] = along ? [across(220), down(80)] : [down(90), across(220)];
	const extra = Math.max(-size * 0.7, Math.min(part, 4) * strip * sides);
	const [from, to] = sides === 2 ? [-extra / 2, size + extra / 2] : [0, size + extra];
	const bar = (start: number, end: number, fill: Fill, line: Line = 'edge'): Shape =>
		along
			? rectangle(start, 0, end - start, other, fill, line)
			: rectangle(0, start, other, end - start, fill, line);
	const short = part < 0;
	return {
		title: `The finished part on a blank of ${label}.`,
		...(!rough && { dashed: 'the finished part' }),
		shapes: [
			bar(from, to, short ? 'metal-a' : 'waste'),
			bar(0, size, short ? 'none' : 'metal-a', rough ? 'slip' : 'hidden'),
			...(along
				? dimensionAcross(from, to, other + 26, other, label)
				: dimensionDown(from, to, other + 26, other, label))
		]
	};
}
