import { type Drawing, rectangle, segment, type Shape, text } from '../../../figures/drawing.ts';
import { dimensionDown } from '../../../figures/parts/dimension.ts';
import { namesBeside, stackHeight, stackSection } from '../../../figures/parts/joint.ts';
import { plate, roundFeature } from '../../../figures/parts/plate.ts';
import type { Value } from '../../../quantity/value.ts';
import { across, down } from '../../../figures/size.ts';
import type { Values } from '../../../solver/compiled.ts';
import type { Say } from '../../family.ts';

/* The panel from above, and under it a section through its rivets: not to scale. */

/** Half of a flange. */
const half = 9;

/** The panel; from an edge of it to the end hole, and on to the next; a doubler across it. */
function plan() {
	const bottom = -62;
	const top = bottom - down(114);
	return {
		panel: { left: -8, top, right: across(138) - 8, bottom },
		toEdge: down(20),
		toNext: down(26),
		band: { top: top + down(54), bottom: top + down(82) }
	};
}

export function panelFigure(given: Values, say: Say): Drawing {
	const rows = Number(given.rows);
	const layers = numbersIn(given.layers);
	const doubled = given.layersB !== undefined;
	return {
		title: `A panel from above with ${rows} members behind it${doubled ? ' and a doubler across it' : ''}, a row of rivets along each; under it a section through ${layers.length} layers.`,
		shapes: [...fromAbove(given, rows, doubled, say), ...section(layers, doubled, say)]
	};
}

function numbersIn(value: Value | undefined): readonly number[] {
	return Array.isArray(value) ? value.map(Number) : [];
}

function fromAbove(given: Values, rows: number, doubled: boolean, say: Say): Shape[] {
	const { panel, band } = plan();
	const { left, right, bottom } = panel;
	const apart = (right - left - 2 * half - 8) / (rows - 1);
	const places = Array.from({ length: rows }, (_, i) => left + half + 4 + i * apart);
	const [first = left] = places;
	// Beside the panel: between two flanges there is no room for a letter.
	const name = { anchor: 'end', tone: 'ink' } as const;
	return [
		...plate(panel),
		...(doubled
			? [
					rectangle(left, band.top, right - left, band.bottom - band.top, 'metal-c'),
					text(left - 6, (band.top + band.bottom) / 2 + 4, 'A', name),
					text(left - 6, (band.bottom + bottom) / 2 + 4, 'B', name)
				]
			: []),
		...places.flatMap((x) => member(x)),
		...(given.rowLength === undefined ? [] : dimensions(given, first, say)),
		text(left - 4, bottom + 16, 'not to scale', { anchor: 'end', tone: 'soft' })
	];
}

/** A flange behind the panel, and the ends of its row of holes. */
function member(x: number): Shape[] {
	const { panel, toEdge, toNext } = plan();
	const { top, bottom } = panel;
	return [
		...[x - half, x + half].map((side) => segment(side, top, side, bottom, 'hidden')),
		segment(x, top - 6, x, bottom + 6, 'centre'),
		...[top + toEdge, top + toEdge + toNext, bottom - toEdge].flatMap((y) => roundFeature(x, y, 3))
	];
}

function dimensions(given: Values, first: number, say: Say): Shape[] {
	const { panel, toEdge, toNext } = plan();
	const { left, top, right, bottom } = panel;
	const [end, next] = [top + toEdge, top + toEdge + toNext];
	return [
		...dimensionDown(top, end, left - 14, [left, first - 7], 'E'),
		...dimensionDown(
			end,
			next,
			left - 14,
			first - 7,
			`≤ ${say('greatestPitch', given.greatestPitch ?? 0)}`
		),
		...dimensionDown(top, bottom, right + 18, right, say('rowLength', given.rowLength ?? 0))
	];
}

/** The layers of a row, the skin at the top; a doubler on it ends half way. */
function section(layers: readonly number[], doubled: boolean, say: Say): Shape[] {
	const width = across(190);
	const scale = down(46) / Math.max(stackHeight(layers, 1), 0.05);
	const along = doubled ? layers.slice(1) : layers;
	const doubler = doubled ? (layers[0] ?? 0) * scale : 0;
	const middles = layers.map(
		(one, i) => (stackHeight(layers.slice(0, i), 1) + one / 2) * scale - doubler
	);
	const names = layers.map((one) => say('layers', one));
	const stacks = doubled ? (['A', 'B'] as const) : ([''] as const);
	const lines = stacks.flatMap((name, i) => {
		const x = (width * (2 * i + 1)) / (2 * stacks.length);
		return [
			segment(x, -doubler - 14, x, stackHeight(along, scale) + 14, 'centre'),
			...(name ? [text(x, -doubler - 20, name, { anchor: 'middle', tone: 'ink' })] : [])
		];
	});
	return [
		...stackSection({ layers: along, width, scale }),
		...(doubled ? [rectangle(0, -doubler, width / 2, doubler, 'metal-c')] : []),
		...namesBeside(names, middles),
		...lines
	];
}
