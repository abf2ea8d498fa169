import { circle, path, polyline, rectangle, segment, type Shape } from '../drawing.ts';
import { across } from '../size.ts';
import { pathData } from './path-data.ts';

export type HeadShape = 'universal' | 'countersunk';

/** Half the angle of a 100 degree countersunk head, as a slope. */
const flare = Math.tan((50 * Math.PI) / 180);

/**
 * Manufactured head of a shank of radius `r`, seated on the face at `y`. Universal: 2 D across,
 * 0.425 D high with a flat on top (FAA-H-8083-31B, p. 4-31, Fig. 4-74); countersunk: 100 degrees
 * (same figure), drawn 1.8 D across.
 */
export function manufacturedHead(x: number, y: number, r: number, head: HeadShape): Shape[] {
	if (head === 'countersunk') {
		const outline: [number, number][] = [
			[x - 1.8 * r, y],
			[x + 1.8 * r, y],
			[x + r, y + countersunkDepth(r)],
			[x - r, y + countersunkDepth(r)]
		];
		return [path(polyline(outline, true), 'edge', 'rivet')];
	}
	const top = y - 0.85 * r;
	const [left, right] = [x - 0.7 * r, x + 0.7 * r];
	const rise = pathData`M${x - 2 * r} ${y}Q${x - 1.7 * r} ${top} ${left} ${top}`;
	const fall = pathData`L${right} ${top}Q${x + 1.7 * r} ${top} ${x + 2 * r} ${y}Z`;
	return [path(rise + fall, 'edge', 'rivet')];
}

/** How much of the sheets is shown beside a rivet: more where there is room for it. */
export function widthBeside(D: number, scale: number): number {
	return Math.max(across(250), 2 * D * scale + 40);
}

/** How deep the countersunk head of a shank of radius `r` goes, as it is drawn here. */
export function countersunkDepth(r: number): number {
	return (0.8 * r) / flare;
}

/** Marks on the heads of solid rivets by alloy letters (FAA-H-8083-31B, p. 4-33, Fig. 4-77). */
export function headMark(x: number, y: number, r: number, letters: string): Shape[] {
	switch (letters) {
		case 'AD':
			return [circle(x, y, r * 0.14, 'ink')];
		case 'D':
			return [circle(x, y, r * 0.2, 'rivet')];
		case 'DD':
			return [
				rectangle(x - r * 0.58, y - r * 0.08, r * 0.42, r * 0.16, 'rivet'),
				rectangle(x + r * 0.16, y - r * 0.08, r * 0.42, r * 0.16, 'rivet')
			];
		case 'B':
			return [segment(x - r * 0.4, y, x + r * 0.4, y), segment(x, y - r * 0.4, x, y + r * 0.4)];
		default:
			return [];
	}
}

/** A rivet out of the bin, standing on its shank; the length counts from y = 0 down. */
export function looseRivet(x: number, r: number, length: number, head: HeadShape): Shape[] {
	return [
		rectangle(x - r, 0, 2 * r, length, 'rivet'),
		...manufacturedHead(x, 0, r, head),
		segment(x, (head === 'universal' ? -0.85 * r : 0) - 8, x, length + 8, 'centre')
	];
}
