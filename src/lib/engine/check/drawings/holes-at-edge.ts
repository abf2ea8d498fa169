import { circle, type Drawing, segment, type Shape, text } from '../../figures/drawing.ts';
import { plate } from '../../figures/parts/plate.ts';
import { listedPlaces } from '../next.ts';
import type { Checkup } from '../check.ts';
import {
	boundText,
	legend,
	sizeText,
	smallHole,
	type Spot,
	spotsOf,
	toneOf,
	verdictMark
} from './spots.ts';

/** Room that a hole takes along the edge, for its number to stand clear of the next. */
const room = 20;
/** From the edge of the sheet to the top of the next strip: numbers, marks and sizes. */
const between = 92;

/**
 * The edge of the sheet with its holes, as far in as they were measured; in strips one under the
 * other where one has no room for all. Along the edge they stand evenly: nobody measured that.
 */
export function holesAtEdge(checkup: Checkup, width: number, D: number): Drawing {
	const spots = spotsOf(checkup, 'Edge distance');
	const left = 34;
	const most = Math.max(1, Math.floor((width - left - 14) / room));
	const strips = Math.max(1, Math.ceil(spots.length / most));
	const each = Math.ceil(spots.length / strips) || 1;
	const apart = (width - left - 14) / each;
	const [first] = spots;
	const least = first?.least?.bound ?? 2 * D;
	const deepest = Math.max(least * 1.2, ...spots.map(({ value }) => value));
	const scale = Math.min(120 / (deepest + 1.5 * D), (apart * 0.62) / D);
	const high = (deepest + 1.5 * D) * scale;
	const strip = { left, width, apart, scale, high, D };
	const bottom = (i: number) => i * (high + between);
	return {
		title: titleOf(checkup, spots),
		shapes: [
			...Array.from({ length: strips }, (_, i) =>
				stripOf(checkup, spots.slice(i * each, (i + 1) * each), bottom(i), strip)
			).flat(),
			...legend(left + 8, bottom(strips - 1) + 58)
		]
	};
}

interface Strip {
	readonly left: number;
	readonly width: number;
	readonly apart: number;
	readonly scale: number;
	readonly high: number;
	readonly D: number;
}

/** One stretch of the edge, which lies at `bottom`. */
function stripOf(
	checkup: Checkup,
	spots: readonly Spot[],
	bottom: number,
	{ left, width, apart, scale, high, D }: Strip
): Shape[] {
	const [first] = spots;
	const top = bottom - high;
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
	return [
		...plate({ left, top, right: width, bottom }),
		...limits,
		...spots.flatMap((spot, i) => [
			...smallHole(x(i), y(spot.value), radius),
			...ringed(spot, x(i), y(spot.value), radius),
			...numbered(spot, x(i), bottom)
		]),
		...callouts(checkup, spots, { x, top })
	];
}

function ringed({ verdict }: Spot, x: number, y: number, radius: number): Shape[] {
	return verdict === 'fails' ? [circle(x, y, radius + 5, 'none', 'slip')] : [];
}

function numbered({ name, verdict }: Spot, x: number, bottom: number): Shape[] {
	return [
		text(x, bottom + 20, name || '1', { anchor: 'middle', tone: toneOf(verdict) }),
		...verdictMark(x, bottom + 32, verdict)
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
