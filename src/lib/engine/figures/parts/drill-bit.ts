import { path, polyline, rectangle, type Shape } from '../drawing.ts';
import { pathData } from './path-data.ts';

/** Rise of a 135 degree point over its radius (FAA-H-8083-31B, p. 4-17: the point for aluminium). */
const pointRise = 1 / Math.tan((67.5 * Math.PI) / 180);

/** A twist drill pointing down, its tip at (x, y), `diameter` wide and `length` long. */
export function drillBit(x: number, y: number, diameter: number, length: number): Shape[] {
	const r = diameter / 2;
	const shoulder = y - r * pointRise;
	const top = y - length;
	const turns = Math.max(1, Math.round((shoulder - top) / (1.3 * diameter)));
	const rise = (shoulder - top) / turns;
	const flutes = Array.from({ length: turns }, (_, i) => shoulder - i * rise).flatMap((low) => [
		curve(x, r, low, rise * 0.8),
		curve(x, r, low - rise * 0.2, rise * 0.8)
	]);
	return [
		rectangle(x - r, top, diameter, shoulder - top, 'paper'),
		path(
			polyline(
				[
					[x - r, shoulder],
					[x + r, shoulder],
					[x, y]
				],
				true
			),
			'edge',
			'paper'
		),
		...flutes
	];
}

/** The edge of a flute, from the left side at `low` up to the right side. */
function curve(x: number, r: number, low: number, rise: number): Shape {
	const [left, right, high] = [x - r, x + r, low - rise];
	return path(
		pathData`M${left} ${low}Q${x + 0.3 * r} ${low - 0.3 * rise} ${right} ${high}`,
		'thin'
	);
}
