import { type Drawing, segment, type Shape, text, widthOf } from '../drawing.ts';
import { dimensionAcross, dimensionDown } from './dimension.ts';
import { plate, roundFeature } from './plate.ts';
import { across, both, down } from '../size.ts';

/** Two lapped sheets from above, their rivets staggered: not to scale. */
export function lapFromAbove(rows: number, labels: { D: string; pitch: string }): Drawing {
	const [bottom, step, apart, edge] = [down(168), down(56), across(46), across(36)];
	const [left, beyond] = [across(90), across(80)];
	const right = left + 2 * edge + (rows - 1) * apart;
	const [rivets, scale] = [`rivets D ${labels.D}`, 'not to scale'];
	const isLong = widthOf(rivets) + widthOf(scale) + 12 > right + beyond;
	const columns = Array.from({ length: rows }, (_, row) => left + edge + row * apart);
	const heads = columns.flatMap((x, row) => staggered(x, row, { bottom, step, radius: both(11) }));
	return {
		title: `Two sheets lapped, seen from above, with ${rows} rows of rivets.`,
		shapes: [
			...plate({ left: 0, top: 0, right, bottom }, 'metal-b', ['left']),
			...plate({ left, top: 0, right: right + beyond, bottom }, 'metal-a', ['right']),
			segment(right, 0, right, bottom, 'hidden'),
			...heads,
			...dimensionDown(step / 2, 1.5 * step, -14, columns[0] ?? left, ''),
			text(-20, step + 4, labels.pitch, { anchor: 'end' }),
			...dimensionAcross(left, right, bottom + 24, bottom, ''),
			text((left + right) / 2, bottom + 44, 'width of the lap', { anchor: 'middle' }),
			text(right + beyond, -8, rivets, { anchor: 'end' }),
			text(0, isLong ? -24 : -8, scale, { tone: 'soft' })
		]
	};
}

interface Heads {
	readonly bottom: number;
	readonly step: number;
	readonly radius: number;
	readonly off?: boolean;
}

/** One row of heads down the lap; every second row is shifted by half a step. */
function staggered(x: number, row: number, { bottom, step, radius, off }: Heads): Shape[] {
	const shapes: Shape[] = [];
	for (let y = row % 2 === 0 ? step / 2 : step; y + radius < bottom; y += step) {
		shapes.push(...roundFeature(x, y, radius, off ? 'paper' : 'rivet', off ? 'slip' : 'edge'));
	}
	return shapes;
}

export interface Lap {
	readonly D: number;
	readonly rows: number;
	readonly pitch: number;
	readonly width: number;
	readonly edge: number;
	readonly apart: number;
	/** The rows that are wrong: none, the one next to the far edge, or how they stand apart. */
	readonly off: 'none' | 'last' | 'all';
	/** Width that the scale is chosen by. */
	readonly wanted: number;
}

/**
 * A lap cut to its width, the first row an edge distance from its left edge, to scale; what has
 * no room on the sheet is broken off, and rows there are left out.
 */
export function lapToScale(lap: Lap, labels: { width: string; apart: string }): Shape[] {
	const { D, rows, pitch, width, edge, apart, off, wanted } = lap;
	const [scale, widest] = [across(170) / wanted, across(360)];
	const bottom = Math.min(Math.max(pitch * scale, down(40)) * 1.6, down(150));
	const drawn = Math.max(4, Math.min(width * scale, widest));
	const placed = Array.from({ length: rows }, (_, row) => {
		return Math.max(0, Math.min((edge + row * apart) * scale, widest));
	});
	const [one = 0, two = one] = placed;
	return [
		...plate({ left: 0, top: 0, right: drawn, bottom }, 'metal-a', drawn < widest ? [] : ['right']),
		...placed.flatMap((x, row) =>
			x === widest
				? []
				: staggered(x, row, {
						bottom,
						step: Math.max(pitch * scale, 12),
						radius: (D * scale) / 2,
						off: off === 'all' || (off === 'last' && row === rows - 1)
					})
		),
		...dimensionAcross(0, drawn, bottom + 24, bottom, labels.width),
		...(two > one ? dimensionAcross(one, two, -16, 0, labels.apart) : [])
	];
}
