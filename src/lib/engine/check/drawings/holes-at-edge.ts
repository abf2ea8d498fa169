import { circle, type Drawing, segment, type Shape, text } from '../../figures/drawing.ts';
import { plate, roundFeature } from '../../figures/parts/plate.ts';
import { listedPlaces } from '../next.ts';
import type { Checkup } from '../check.ts';
import { boundText, legend, sizeText, type Spot, spotsOf, toneOf, verdictMark } from './spots.ts';

/**
 * The edge of the sheet with its holes, as far in as they were measured. Along the edge they stand
 * evenly: nobody measured that.
 *
 * @param next the hole that is asked for, from 0; drawn where the least edge distance is
 */
export function holesAtEdge(
	checkup: Checkup,
	width: number,
	D: number,
	next: number | null = null
): Drawing {
	const spots = spotsOf(checkup, 'Edge distance');
	const shown = next === null ? spots : spots.slice(0, next);
	const count = Math.max(shown.length, (next ?? -1) + 1, 1);
	const left = 34;
	const apart = (width - left - 14) / count;
	const [first] = spots;
	const least = first?.least?.bound ?? 2 * D;
	const deepest = Math.max(least * 1.2, ...shown.map(({ value }) => value));
	const scale = Math.min(120 / (deepest + 1.5 * D), (apart * 0.62) / D);
	const bottom = 0;
	const top = -(deepest + 1.5 * D) * scale;
	const x = (i: number) => left + (i + 0.5) * apart;
	const y = (value: number) => bottom - value * scale;
	const radius = Math.max(2, (D * scale) / 2);
	const limits = [first?.least, first?.most].flatMap((told) =>
		told && y(told.bound) > top
			? [
					segment(left, y(told.bound), width, y(told.bound), 'hidden'),
					text(left - 4, y(told.bound) + 4, boundText(checkup, told), {
						anchor: 'end',
						tone: 'soft'
					})
				]
			: []
	);
	const holes = shown.flatMap((spot, i) => [
		...roundFeature(x(i), y(spot.value), radius),
		...ringed(spot, x(i), y(spot.value), radius),
		...numbered(spot, x(i), apart)
	]);
	const asked =
		next === null
			? []
			: [
					...roundFeature(x(next), y(least), radius, 'none', 'dim'),
					circle(x(next), y(least), radius + 6, 'none', 'dim'),
					text(x(next), 20, String(next + 1), { anchor: 'middle' })
				];
	return {
		title: titleOf(checkup, spots),
		shapes: [
			...plate({ left, top, right: width, bottom }),
			...limits,
			...holes,
			...asked,
			...callouts(checkup, shown, { x, top }),
			...legend(left + 8, 58)
		]
	};
}

function ringed({ verdict }: Spot, x: number, y: number, radius: number): Shape[] {
	return verdict === 'fails' ? [circle(x, y, radius + 5, 'none', 'slip')] : [];
}

function numbered({ name, verdict }: Spot, x: number, apart: number): Shape[] {
	if (apart < 12 && verdict === 'holds') return [];
	return [
		text(x, 20, name || '1', { anchor: 'middle', tone: toneOf(verdict) }),
		...verdictMark(x, 32, verdict)
	];
}

/** What is out or cannot be told, lettered above the plate; not so near that they meet. */
function callouts(
	{ units }: Checkup,
	spots: readonly Spot[],
	{ x, top }: { x: (i: number) => number; top: number }
): Shape[] {
	const room: number[] = [-Infinity, -Infinity, -Infinity];
	return spots.flatMap((spot, i) => {
		if (spot.verdict === 'holds') return [];
		const row = room.findIndex((end) => end < x(i) - 26);
		if (row < 0) return [];
		room[row] = x(i) + 22;
		const at = top - 8 - 16 * row;
		const word = sizeText(spot.value, units);
		return [
			text(x(i), at, word, { anchor: 'middle', tone: toneOf(spot.verdict) }),
			segment(x(i), at + 4, x(i), top, spot.verdict === 'fails' ? 'slip' : 'thin')
		];
	});
}

function titleOf(checkup: Checkup, spots: readonly Spot[]): string {
	const out = spots.filter(({ verdict }) => verdict === 'fails').map(({ name }) => name);
	const told = out.length > 0 ? `out: ${listedPlaces(out)}` : 'none is out';
	return `The edge of the sheet to scale with ${spots.length} ${checkup.check.each}s at their edge distances; ${told}.`;
}
