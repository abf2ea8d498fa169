import { circle, type Drawing, type Shape, text } from '../../figures/drawing.ts';
import type { Checkup } from '../check.ts';
import { legend, sizeText, type Spot, spotsOf, toneOf, verdictMark } from './spots.ts';

/** Holes or shanks seen from above, to scale, with their limits dashed. */
export function circles(
	checkup: Checkup,
	width: number,
	{ what, fill }: { what: string; fill: 'paper' | 'rivet' }
): Drawing {
	const spots = spotsOf(checkup, what);
	const perRow = Math.max(1, Math.min(spots.length, Math.floor(width / 76)));
	const apart = width / perRow;
	const largest = Math.max(...spots.flatMap(sizesOf));
	const scale = Math.min(apart - 24, 100) / largest;
	const rowHeight = largest * scale + 50;
	const shapes = spots.flatMap((spot, i): Shape[] => {
		const x = ((i % perRow) + 0.5) * apart;
		const y = Math.floor(i / perRow) * rowHeight;
		const under = y + (largest * scale) / 2;
		const limits = [spot.least, spot.most].flatMap((told) =>
			told ? [circle(x, y, (told.bound * scale) / 2, 'none', 'hidden')] : []
		);
		return [
			circle(x, y, (spot.value * scale) / 2, fill, spot.verdict === 'fails' ? 'slip' : 'edge'),
			...limits,
			text(x - 12, under + 18, spot.name || '1', { anchor: 'end', tone: toneOf(spot.verdict) }),
			...verdictMark(x, under + 14, spot.verdict),
			text(x, under + 34, sizeText(spot.value, checkup.units), {
				anchor: 'middle',
				tone: toneOf(spot.verdict)
			})
		];
	});
	const rows = Math.ceil(spots.length / perRow);
	return {
		title: `${spots.length} of ${what.toLowerCase()} to scale, with the limits dashed.`,
		shapes: [...shapes, ...legend(8, (rows - 1) * rowHeight + (largest * scale) / 2 + 58)]
	};
}

function sizesOf({ value, least, most }: Spot): number[] {
	return [value, least?.bound ?? 0, most?.bound ?? 0];
}
