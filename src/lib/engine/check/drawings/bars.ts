import { type Drawing, rectangle, segment, type Shape, text } from '../../figures/drawing.ts';
import type { Checkup } from '../check.ts';
import {
	legend,
	namesOf,
	reachOf,
	sizeText,
	type Spot,
	spotsOf,
	toneOf,
	verdictMark
} from './spots.ts';

const step = 30;

/** Lengths as bars to scale, one under the other, each with its limits as dashed lines. */
export function bars(checkup: Checkup, width: number): Drawing {
	const rows = namesOf(checkup).flatMap((what) =>
		spotsOf(checkup, what).map((spot) => ({ what, spot }))
	);
	const left = 26;
	const right = width - 64;
	const largest = Math.max(...rows.map(({ spot }) => reachOf(spot)));
	const scale = (right - left) / largest;
	let y = 0;
	let last = '';
	const shapes = rows.flatMap(({ what, spot }): Shape[] => {
		const titled = what === last ? [] : [text(0, y + 12, what, { tone: 'soft' })];
		if (what !== last) y += 20;
		last = what;
		const at = y;
		y += step;
		return [
			...titled,
			...barAt(checkup, spot, { left, right: left + spot.value * scale, y: at, scale })
		];
	});
	return {
		title: `${rows.length} lengths to scale, each with its limits dashed.`,
		shapes: [...shapes, ...legend(8, y + 16)]
	};
}

function barAt(
	{ units }: Checkup,
	spot: Spot,
	{ left, right, y, scale }: { left: number; right: number; y: number; scale: number }
): Shape[] {
	const limits = [spot.least, spot.most].flatMap((told) =>
		told
			? [segment(left + told.bound * scale, y - 3, left + told.bound * scale, y + 19, 'hidden')]
			: []
	);
	return [
		text(left - 8, y + 12, spot.name, { anchor: 'end', tone: toneOf(spot.verdict) }),
		rectangle(left, y, right - left, 16, 'metal-a', spot.verdict === 'fails' ? 'slip' : 'edge'),
		...limits,
		...verdictMark(right + 14, y + 8, spot.verdict),
		text(right + 24, y + 12, sizeText(spot.value, units), { tone: toneOf(spot.verdict) })
	];
}
