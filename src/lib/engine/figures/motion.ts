import { type Move, polyline } from './drawing.ts';
import { section } from './parts/bent.ts';

type Bent = Extract<Move, { kind: 'bent' }>;

/**
 * Outlines of a sheet on its way from nearly flat to bent, as path data. The metal in a bend keeps
 * its length along the middle, so the radius shrinks as the angle grows.
 *
 * @param count how many, two or more
 */
export function bendingUp({ sheet, scale, start }: Bent, count: number): string[] {
	const { R, T, bends } = sheet;
	return Array.from({ length: count }, (_, i) => {
		const part = Math.max(0.04, i / (count - 1));
		const radius = (R + T / 2) / part - T / 2;
		const turned = bends.map((one) => one * part);
		return polyline(section({ ...sheet, R: radius, bends: turned }, scale, start).outline, true);
	});
}
