import { type Shape } from '../drawing.ts';
import { dimensionAcross, dimensionDown, leader } from './dimension.ts';
import { drivenRivet, stackHeight, stackSection } from './joint.ts';
import { widthBeside } from './rivet.ts';
import { down } from '../size.ts';

/** A shop head in inches. */
export interface ShopHead {
	readonly across: number;
	readonly high: number;
}

interface HeadNotes {
	readonly D?: string;
	readonly across?: string;
	readonly high?: string;
}

/**
 * A driven rivet in two sheets, its shop head to scale with the shank.
 *
 * @param like the diameter that is drawn as thick as every other
 */
export function drivenSection(D: number, head: ShopHead, notes: HeadNotes = {}, like = D): Shape[] {
	// Every rivet is drawn as thick, so that heads can be compared by their shape.
	const scale = down(58) / like;
	const width = widthBeside(1.5 * D, scale);
	const x = width / 2;
	const layers = [0.35 * D, 0.35 * D];
	const grip = stackHeight(layers, 1);
	const wide = between(head.across, 0.2 * D, 4 * D);
	const high = between(head.high, 0.03 * D, 3 * D);
	const [top, bottom] = [grip * scale, (grip + high) * scale];
	const [left, right] = [x - (wide * scale) / 2, x + (wide * scale) / 2];
	const shapes = [
		...stackSection({ layers, width, scale }),
		...drivenRivet(x, D, grip, { across: wide, high }, scale)
	];
	// Under the sheet: beside it the label would leave a phone little room for the metal.
	if (notes.D)
		shapes.push(...leader(x - (D * scale) / 2, 0.75 * top, left - 14, top + 14, notes.D));
	if (notes.across) shapes.push(...dimensionAcross(left, right, bottom + 32, bottom, notes.across));
	// Beside a flat head the label would run into the sheet.
	if (notes.high) {
		const place = { narrow: 'below' } as const;
		shapes.push(...dimensionDown(top, bottom, right + 34, right, notes.high, place));
	}
	return shapes;
}

function between(value: number, low: number, high: number): number {
	return Math.min(Math.max(value, low), high);
}
