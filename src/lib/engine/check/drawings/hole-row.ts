import { type Drawing, segment, type Shape, text } from '../../figures/drawing.ts';
import { plate } from '../../figures/parts/plate.ts';
import type { Checkup } from '../check.ts';
import { legend, sizeText, smallHole, spotsOf, toneOf, verdictMark } from './spots.ts';

interface Row {
	readonly length: number;
	readonly holes: readonly number[];
	readonly D: number | null;
}

/** The piece to scale along its length, its holes where they were measured. */
export function holeRow(checkup: Checkup, width: number, { length, holes, D }: Row): Drawing {
	const scale = width / length;
	const [height, y] = [44, 22];
	const radius = Math.max(2.5, ((D ?? 0) * scale) / 2);
	const x = (at: number) => at * scale;
	const spaces = spotsOf(checkup, 'Pitch').flatMap((spot, i) => {
		const [from, to] = [holes[i], holes[i + 1]];
		if (from === undefined || to === undefined) return [];
		const middle = x((from + to) / 2);
		const shown = spot.verdict !== 'holds' || x(to) - x(from) > 42;
		return [
			...(shown
				? [
						text(middle, height + 30, sizeText(spot.value, checkup.units), {
							anchor: 'middle',
							tone: toneOf(spot.verdict)
						})
					]
				: []),
			...(spot.verdict === 'holds' ? [] : outOf(x(from), x(to), height + 10, spot.verdict))
		];
	});
	const ends = [
		{ what: 'First hole to its end', from: 0, to: holes[0] ?? 0 },
		{ what: 'Last hole to its end', from: holes.at(-1) ?? length, to: length }
	].flatMap(({ what, from, to }) => {
		const [spot] = spotsOf(checkup, what);
		return !spot || spot.verdict === 'holds' ? [] : outOf(x(from), x(to), -8, spot.verdict);
	});
	return {
		title: `The piece to scale with ${holes.length} holes where they were measured.`,
		shapes: [
			...plate({ left: 0, top: 0, right: width, bottom: height }),
			...holes.flatMap((at) => smallHole(x(at), y, radius)),
			...spaces,
			...ends,
			text(0, -20, 'reference edge', { tone: 'soft' }),
			...legend(8, height + 60)
		]
	};
}

/** A stretch that is out or cannot be told. */
function outOf(from: number, to: number, y: number, verdict: 'fails' | 'undecided'): Shape[] {
	const line = verdict === 'fails' ? 'slip' : 'thin';
	return [
		segment(from, y - 4, from, y + 4, line),
		segment(to, y - 4, to, y + 4, line),
		segment(from, y, to, y, line),
		...verdictMark((from + to) / 2, y, verdict)
	];
}
