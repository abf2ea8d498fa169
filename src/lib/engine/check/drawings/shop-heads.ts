import { type Drawing, rectangle, segment, type Shape, text } from '../../figures/drawing.ts';
import type { Checkup } from '../check.ts';
import { worseOf } from '../say.ts';
import { legend, reachOf, sizeText, type Spot, spotsOf, toneOf, verdictMark } from './spots.ts';

/** Heads from the side, to scale: filled as measured, dashed the least and the most of the limits. */
export function shopHeads(checkup: Checkup, width: number): Drawing {
	const [wide, high] = [spotsOf(checkup, 'Head width'), spotsOf(checkup, 'Head height')];
	const perRow = Math.max(1, Math.min(wide.length, Math.floor(width / 84)));
	const apart = width / perRow;
	const widest = Math.max(...wide.map(reachOf));
	const highest = Math.max(...high.map(reachOf));
	const scale = Math.min((apart - 20) / widest, 70 / highest);
	const rowHeight = highest * scale + 52;
	const shapes = wide.flatMap((one, i) => {
		const [other] = [high[i]];
		if (!other) return [];
		const x = ((i % perRow) + 0.5) * apart;
		const y = Math.floor(i / perRow) * rowHeight;
		return headAt(checkup, x, y, scale, { one, other, apart });
	});
	const rows = Math.ceil(wide.length / perRow);
	return {
		title: `${wide.length} shop heads from the side, to scale, with the least and the most that is allowed dashed.`,
		shapes: [...shapes, ...legend(8, rows * rowHeight - highest * scale + 8)]
	};
}

interface Head {
	/** Its width. */
	readonly one: Spot;
	/** Its height. */
	readonly other: Spot;
	readonly apart: number;
}

/** A head on the sheet, whose face is at `y`. */
function headAt(
	{ units }: Checkup,
	x: number,
	y: number,
	scale: number,
	{ one, other, apart }: Head
): Shape[] {
	const box = (
		across: number,
		up: number,
		line: 'edge' | 'hidden' | 'slip',
		fill: 'rivet' | 'none'
	) => rectangle(x - (across * scale) / 2, y - up * scale, across * scale, up * scale, fill, line);
	const verdict = worseOf(one.verdict, other.verdict);
	const limits = [
		[one.least, other.least],
		[one.most, other.most]
	].flatMap(([across, up]) =>
		across && up ? [box(across.bound, up.bound, 'hidden', 'none')] : []
	);
	const size = `${sizeText(one.value, units)} × ${sizeText(other.value, units)}`;
	return [
		box(one.value, other.value, verdict === 'fails' ? 'slip' : 'edge', 'rivet'),
		...limits,
		segment(x - apart / 2 + 4, y, x + apart / 2 - 4, y),
		text(x - 12, y + 16, one.name || '1', { anchor: 'end', tone: toneOf(verdict) }),
		...verdictMark(x, y + 12, verdict),
		...(apart > 100 || verdict !== 'holds'
			? [text(x, y + 34, size, { anchor: 'middle', tone: toneOf(verdict) })]
			: [])
	];
}
