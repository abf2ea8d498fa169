import { circle, type Shape, text } from '../drawing.ts';
import { dimensionAcross, dimensionDown } from './dimension.ts';
import { type HeadShape, headMark, looseRivet } from './rivet.ts';
import { across, down } from '../size.ts';

interface RivetShown {
	/** Inches. */
	readonly D: number;
	readonly length: number;
	readonly head: HeadShape;
	/** Alloy letters, for the mark on the head. */
	readonly letters: string;
}

/** Sizes without a note are not dimensioned. */
interface RivetNotes {
	readonly D: string;
	readonly length: string;
}

/** Units per inch at which every one of these rivets fits. */
export function rivetScale(rivets: readonly { D: number; length: number }[]): number {
	const longest = Math.max(...rivets.map(({ length }) => length));
	const thickest = Math.max(...rivets.map(({ D }) => D));
	return Math.min(down(190) / longest, across(44) / thickest);
}

/**
 * A loose rivet from the side with its sizes, and its head from above with the mark of the
 * alloy. The length of a countersunk rivet counts over the head. `scale` is units per inch.
 */
export function rivetDrawing(rivet: RivetShown, notes: RivetNotes, scale: number): Shape[] {
	const { D, length, head, letters } = rivet;
	const [r, tip] = [(D * scale) / 2, length * scale];
	const headRadius = head === 'universal' ? 2 * r : 1.8 * r;
	const [x, fromAbove] = [0, -headRadius - r - 70];
	const middle = tip / 2;
	return [
		...looseRivet(x, r, tip, head),
		...(notes.D ? dimensionAcross(x - r, x + r, tip + 22, tip, notes.D) : []),
		...(notes.length
			? dimensionDown(0, tip, x + headRadius + 18, [x + headRadius, x + r], notes.length)
			: []),
		circle(fromAbove, middle, headRadius, 'rivet'),
		...headMark(fromAbove, middle, headRadius, letters),
		text(fromAbove, middle + headRadius + 18, 'head from above', { tone: 'soft', anchor: 'middle' })
	];
}
