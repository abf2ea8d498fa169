import { type Fill, path, polyline, rectangle, segment, type Shape, text } from '../drawing.ts';
import { pathData } from './path-data.ts';
import { manufacturedHead, type HeadShape } from './rivet.ts';

/*
 * A riveted joint in section: sheets lie one under the other from y = 0 down, the rivet stands
 * on a centre line with its manufactured head on top. Lengths come in inches; `scale` is units
 * per inch.
 */

const metals: readonly Fill[] = ['metal-a', 'metal-b', 'metal-c'];

export interface Stack {
	readonly layers: readonly number[];
	/** What is written to the left of each layer; layers without a name stay bare. */
	readonly names?: readonly string[];
	readonly width: number;
	readonly scale: number;
}

/** The sheets of a stack, their left edge at x = 0. */
export function stackSection({ layers, names = [], width, scale }: Stack): Shape[] {
	const tops = layers.map((_, i) => stackHeight(layers.slice(0, i), scale));
	const sheets = layers.map((thickness, i) =>
		rectangle(0, tops[i] ?? 0, width, thickness * scale, metals[i % metals.length])
	);
	const middles = layers.map((thickness, i) => (tops[i] ?? 0) + (thickness * scale) / 2);
	return [...sheets, ...namesBeside(names, middles)];
}

const lineHeight = 15;

/** Names to the left of thin layers, fanned out so that each has a line of its own. */
export function namesBeside(names: readonly string[], middles: readonly number[]): Shape[] {
	const centre = middles.reduce((total, one) => total + one, 0) / middles.length;
	const crowded = middles.some((y, i) => i > 0 && y - (middles[i - 1] ?? 0) < lineHeight);
	return names.flatMap((name, i) => {
		const middle = middles[i] ?? 0;
		const y = crowded ? centre + (i - (middles.length - 1) / 2) * lineHeight : middle;
		return [
			path(
				polyline([
					[-22, y],
					[-14, y],
					[0, middle]
				]),
				'thin'
			),
			text(-26, y + 4, name, { tone: 'ink', anchor: 'end' })
		];
	});
}

/** How far up lettering may stand that passes under the names of so many layers. */
export function underNames(count: number, height: number): number {
	return (height + (count - 1) * lineHeight) / 2 + 18;
}

export function stackHeight(layers: readonly number[], scale: number): number {
	return layers.reduce((total, one) => total + one, 0) * scale;
}

/**
 * A rivet before driving: its shank reaches `length` inches down from the outer face. A
 * countersunk head lies in the top sheet.
 */
export function setRivet(
	x: number,
	D: number,
	length: number,
	scale: number,
	head: HeadShape = 'universal'
): Shape[] {
	const r = (D * scale) / 2;
	return [
		rectangle(x - r, 0, 2 * r, length * scale, 'rivet'),
		...manufacturedHead(x, 0, r, head),
		segment(x, -0.85 * r - 10, x, length * scale + 10, 'centre')
	];
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
	const shop = path(roundedBox(x - w, top, 2 * w, h, Math.min(h / 2, w / 2, 7)), 'edge', 'rivet');
	// Before it is driven the metal of the head is shank: narrower, and longer as the square of that.
	return [
		rectangle(x - r, 0, 2 * r, top, 'rivet'),
		...manufacturedHead(x, 0, r, 'universal'),
		{ ...shop, move: { kind: 'driven', about: [x, top], from: [r / w, (w / r) ** 2] } },
		segment(x, -0.85 * r - 10, x, top + h + 10, 'centre')
	];
}

function roundedBox(x: number, y: number, width: number, height: number, c: number): string {
	const [right, bottom] = [x + width, y + height];
	return [
		pathData`M${x + c} ${y}L${right - c} ${y}A${c} ${c} 0 0 1 ${right} ${y + c}`,
		pathData`L${right} ${bottom - c}A${c} ${c} 0 0 1 ${right - c} ${bottom}`,
		pathData`L${x + c} ${bottom}A${c} ${c} 0 0 1 ${x} ${bottom - c}`,
		pathData`L${x} ${y + c}A${c} ${c} 0 0 1 ${x + c} ${y}Z`
	].join('');
}

/** A shank too long for its head: driven, it bends over to one side. */
export function bentOverRivet(
	x: number,
	D: number,
	grip: number,
	out: number,
	scale: number
): Shape[] {
	const r = (D * scale) / 2;
	const top = grip * scale;
	const h = out * scale * 0.7;
	const lean = 0.35 * h;
	const bent = polyline(
		[
			[x - r, top],
			[x + r, top],
			[x + 1.15 * r + lean, top + h],
			[x - 1.15 * r + lean, top + h]
		],
		true
	);
	return [
		rectangle(x - r, 0, 2 * r, top, 'rivet'),
		...manufacturedHead(x, 0, r, 'universal'),
		path(bent, 'edge', 'rivet'),
		segment(x, -0.85 * r - 10, x, top + h + 10, 'centre')
	];
}
