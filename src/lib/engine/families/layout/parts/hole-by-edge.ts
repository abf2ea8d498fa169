import { type Drawing, segment, text } from '../../../figures/drawing.ts';
import { dimensionAcross } from '../../../figures/parts/dimension.ts';
import { plate, roundFeature } from '../../../figures/parts/plate.ts';
import type { Say, SeenBy } from '../../family.ts';
import { across, down } from '../../../figures/size.ts';

/** Outcomes where the hole stands as it was asked. */
const asWanted = ['least', 'preferred', 'greatest'];

/** The hole where the answer puts it, with the least and the greatest beside it, to scale. */
export function holeByEdge(seen: SeenBy, say: Say): Drawing {
	// Every rivet is drawn the same size.
	const [width, unit] = [across(290), across(28)];
	const [top, bottom] = [0, Math.max(unit + 16, down(80))];
	const middle = (top + bottom) / 2;
	const x = width - Math.max(-1.5, Math.min(seen.at('times'), 7.2)) * unit;
	const limits = [
		['min', seen.rightAt('factor')],
		['max', seen.at('greatestTimes')]
	] as const;
	return {
		title: seen.says,
		shapes: [
			...plate({ left: 0, top, right: width, bottom }, 'metal-a', ['left']),
			...limits.flatMap(([name, times]) => {
				const at = width - times * unit;
				return [
					segment(at, top - 8, at, bottom + 8, 'thin'),
					text(at, bottom + 22, name, { anchor: 'middle' })
				];
			}),
			...roundFeature(x, middle, unit / 2, 'paper', asWanted.includes(seen.case) ? 'edge' : 'slip'),
			...dimensionAcross(
				x,
				width,
				top - 18,
				[middle - unit / 2, top],
				say(seen.key, seen.at('entered'))
			)
		]
	};
}
