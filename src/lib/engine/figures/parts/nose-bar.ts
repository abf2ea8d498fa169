import { path, polyline, type Shape } from '../drawing.ts';
import { along, arc, type Point } from './bent.ts';

/** Slope of the upper face of the nose: room for the leaf to fold a sheet past 90 degrees. */
const slope = 40;

/** The nose of a brake over a level sheet, its radius about `centre`, reaching `length` back. */
export function noseBar(centre: Point, R: number, length: number): Shape {
	const round = arc(centre, R, -90, 90 - slope);
	const top = along(centre, 90 - slope, R);
	const back = centre[0] - length;
	const rise = (top[0] - back) * Math.tan((slope * Math.PI) / 180);
	return path(
		polyline([[back, centre[1] + R], ...round, [back, top[1] - rise]], true),
		'edge',
		'metal-c'
	);
}
