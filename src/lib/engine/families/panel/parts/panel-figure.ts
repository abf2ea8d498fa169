import { type Drawing, rectangle, segment, type Shape, text } from '../../../figures/drawing.ts';
import { dimensionDown } from '../../../figures/parts/dimension.ts';
import { namesBeside, stackHeight, stackSection } from '../../../figures/parts/joint.ts';
import { plate, roundFeature } from '../../../figures/parts/plate.ts';
import type { Value } from '../../../quantity/value.ts';
import type { Values } from '../../../solver/compiled.ts';
import type { Say } from '../../family.ts';

/* The panel from above, and under it a section through its rivets: not to scale. */

const panel = { left: -8, top: -176, right: 130, bottom: -62 };
/** Half of a flange. */
const half = 9;
/** From an edge to the end hole, and on to the next. */
const [toEdge, toNext] = [20, 26];
/** A doubler across the panel. */
const band = { top: -122, bottom: -94 };

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
	const { left, right, bottom } = panel;
	const apart = (right - left - 2 * half - 8) / (rows - 1);
	const places = Array.from({ length: rows }, (_, i) => left + half + 4 + i * apart);
	const [first = left] = places;
	return [
		...plate(panel),
		...(doubled
			? [
					rectangle(left, band.top, right - left, band.bottom - band.top, 'metal-c'),
					text(left - 8, (band.top + band.bottom) / 2 + 4, 'A', { anchor: 'end', tone: 'ink' }),
					text(left - 8, bottom - 6, 'B', { anchor: 'end', tone: 'ink' })
				]
			: []),
		...places.flatMap((x) => member(x)),
		...(given.rowLength === undefined ? [] : dimensions(given, first, say)),
		text(left - 4, bottom + 16, 'not to scale', { anchor: 'end', tone: 'soft' })
	];
}

/** A flange behind the panel, and the ends of its row of holes. */
function member(x: number): Shape[] {
	const { top, bottom } = panel;
	return [
		...[x - half, x + half].map((side) => segment(side, top, side, bottom, 'hidden')),
		segment(x, top - 6, x, bottom + 6, 'centre'),
		...[top + toEdge, top + toEdge + toNext, bottom - toEdge].flatMap((y) => roundFeature(x, y, 3))
	];
}

function dimensions(given: Values, first: number, say: Say): Shape[] {
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

const width = 190;

/** The layers of a row, the skin at the top; a doubler on it ends half way. */
function section(layers: readonly number[], doubled: boolean, say: Say): Shape[] {
	const scale = 46 / Math.max(stackHeight(layers, 1), 0.05);
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
