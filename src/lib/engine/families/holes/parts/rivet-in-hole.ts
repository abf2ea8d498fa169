import { type Drawing, rectangle } from '../../../figures/drawing.ts';
import { drilledSheet } from '../../../figures/parts/hole.ts';
import { manufacturedHead, widthBeside } from '../../../figures/parts/rivet.ts';
import type { SeenBy } from '../../family.ts';
import { down } from '../../../figures/size.ts';

/** The shank over or in the hole, to scale; the gap is a few thousandths. */
export function rivetInHole(seen: SeenBy, D: number): Drawing {
	const [scale, thickness] = [down(110) / D, down(46)];
	const width = widthBeside(D, scale);
	const x = width / 2;
	const hole = Math.min(Math.max(seen.at('entered'), 0), 2.2 * D) * scale;
	const shank = thickness + down(30);
	// It stands on a hole that is too small, and sticks half way in one of its own size.
	const lift = { small: -shank, binds: thickness / 2 - shank }[seen.case] ?? 0;
	const r = (D * scale) / 2;
	return {
		title: seen.says,
		shapes: [
			...drilledSheet(x, hole, { width, y: 0, thickness }),
			rectangle(x - r, lift, 2 * r, shank, 'rivet'),
			...manufacturedHead(x, lift, r, 'universal')
		]
	};
}
