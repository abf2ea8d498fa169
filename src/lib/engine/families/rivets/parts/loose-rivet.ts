import type { Drawing } from '../../../figures/drawing.ts';
import { rivetDrawing, rivetScale } from '../../../figures/parts/rivet-drawing.ts';
import type { HeadShape } from '../../../figures/parts/rivet.ts';

interface Size {
	/** Inches. */
	readonly D: number;
	readonly length: number;
}

interface LooseRivet extends Size {
	readonly head: string;
	/** Alloy letters, for the mark on the head. */
	readonly letters: string;
}

/** Sizes that no rivet has are drawn cut down, or as a thin stub. */
function drawnSize({ D, length }: Size): Size {
	return {
		D: Math.min(Math.max(D, 0.01), 0.75),
		length: Math.min(Math.max(length, 0.02), 2.5)
	};
}

/**
 * A rivet out of the bin with its two sizes lettered, to a scale at which the `others` fit too.
 */
export function looseRivetDrawing(
	title: string,
	rivet: LooseRivet,
	notes: { readonly D: string; readonly length: string },
	others: readonly Size[] = []
): Drawing {
	const size = drawnSize(rivet);
	const head: HeadShape = rivet.head === 'countersunk' ? 'countersunk' : 'universal';
	const scale = rivetScale([size, ...others.map(drawnSize)]);
	return { title, shapes: rivetDrawing({ ...rivet, ...size, head }, notes, scale) };
}
