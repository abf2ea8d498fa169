import { type Fill, path, rectangle, segment, type Shape, text } from '../drawing.ts';

/*
 * A riveted joint in section: sheets lie one under the other, the rivet stands on the centre
 * line with its manufactured head on top. Lengths come in inches; `scale` is units per inch.
 */

const metals: readonly Fill[] = ['metal-a', 'metal-b', 'metal-c'];

/** A name is written inside its sheet when the sheet is drawn high enough for lettering. */
const letteringHeight = 14;

export interface Stack {
	readonly layers: readonly number[];
	readonly names: readonly string[];
	readonly width: number;
	readonly scale: number;
}

/** The sheets of a stack from y = 0 down, their left edge at x = 0, with their names. */
export function stackSection({ layers, names, width, scale }: Stack): Shape[] {
	const shapes: Shape[] = [];
	let top = 0;
	layers.forEach((thickness, i) => {
		const height = thickness * scale;
		shapes.push(rectangle(0, top, width, height, metals[i % metals.length]));
		const name = names[i] ?? '';
		const inside = height >= letteringHeight;
		const y = top + height / 2 + 4;
		shapes.push(
			inside ? text(6, y, name, { tone: 'ink' }) : text(-6, y, name, { tone: 'ink', anchor: 'end' })
		);
		top += height;
	});
	return shapes;
}

export function stackHeight(layers: readonly number[], scale: number): number {
	return layers.reduce((total, one) => total + one, 0) * scale;
}

export type HeadShape = 'universal' | 'countersunk';

/**
 * A rivet before driving: manufactured head and shank on the centre line `x`, the shank
 * reaching `length` inches down from the outer face.
 */
export function setRivet(x: number, D: number, length: number, scale: number, head: HeadShape = 'universal'): Shape[] {
	const r = (D * scale) / 2;
	return [
		manufacturedHead(x, r, head),
		rectangle(x - r, 0, 2 * r, length * scale, 'rivet'),
		segment(x, -0.425 * 2 * r - 10, x, length * scale + 10, 'centre')
	];
}

/** Universal: 2 D across, 0.425 D high (airframe handbook p. 4-31); countersunk: 100 degrees. */
function manufacturedHead(x: number, r: number, head: HeadShape): Shape {
	if (head === 'countersunk') {
		const depth = r * 0.67;
		const spread = depth * Math.tan((50 * Math.PI) / 180);
		return path(
			`M${x - r - spread} 0L${x + r + spread} 0L${x + r} ${depth}L${x - r} ${depth}Z`,
			'edge',
			'rivet'
		);
	}
	const height = 0.85 * r;
	const wide = 2 * r;
	return path(
		`M${x - wide} 0A${wide} ${height} 0 0 1 ${x + wide} 0Z`,
		'edge',
		'rivet'
	);
}

/** A driven rivet: the shank ends in a shop head `across` and `high` inches, rounded at the rim. */
export function drivenRivet(
	x: number,
	D: number,
	grip: number,
	shopHead: { across: number; high: number },
	scale: number
): Shape[] {
	const r = (D * scale) / 2;
	const top = grip * scale;
	const w = (shopHead.across * scale) / 2;
	const h = Math.max(1, shopHead.high * scale);
	const c = Math.min(h / 2, 7);
	const head = `M${x - w + c} ${top}L${x + w - c} ${top}A${c} ${c} 0 0 1 ${x + w} ${top + c}L${x + w} ${top + h - c}A${c} ${c} 0 0 1 ${x + w - c} ${top + h}L${x - w + c} ${top + h}A${c} ${c} 0 0 1 ${x - w} ${top + h - c}L${x - w} ${top + c}A${c} ${c} 0 0 1 ${x - w + c} ${top}Z`;
	return [
		manufacturedHead(x, r, 'universal'),
		rectangle(x - r, 0, 2 * r, top, 'rivet'),
		path(head, 'edge', 'rivet'),
		segment(x, -0.85 * r - 10, x, top + h + 10, 'centre')
	];
}
