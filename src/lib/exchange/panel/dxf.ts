import { type LayoutLayer, type LayoutShape, layoutOf } from '../../engine/panel/layout.ts';
import type { PanelPlan } from '../../engine/panel/plan.ts';

/*
 * The layout as DXF R12 in inches, the version that every reader takes. Lines of code and value in
 * turn; plain ASCII.
 */

type Pair = readonly [code: number, value: string | number];

const colours: Readonly<Record<LayoutLayer | 'TEXT', number>> = {
	PANEL: 7,
	CUTOUTS: 1,
	DOUBLERS: 4,
	MEMBERS: 8,
	BENDS: 6,
	ROWS: 5,
	HOLES: 3,
	TEXT: 7
};

/** Height of lettering, inches. */
const lettering = 0.09;

export function writeDxf(plan: PanelPlan): string {
	const layers = Object.entries(colours);
	const pairs: Pair[] = [
		...section('HEADER', [
			[9, '$ACADVER'],
			[1, 'AC1009'],
			[9, '$INSUNITS'],
			[70, 1],
			[9, '$MEASUREMENT'],
			[70, 0]
		]),
		...section('TABLES', [
			...table('LTYPE', 1, [
				[0, 'LTYPE'],
				[2, 'CONTINUOUS'],
				[70, 0],
				[3, 'Solid line'],
				[72, 65],
				[73, 0],
				[40, 0]
			]),
			...table(
				'LAYER',
				layers.length,
				layers.flatMap(([name, colour]): Pair[] => [
					[0, 'LAYER'],
					[2, name],
					[70, 0],
					[62, colour],
					[6, 'CONTINUOUS']
				])
			)
		]),
		...section('ENTITIES', [...layoutOf(plan).flatMap(entities), ...letteringOf(plan)]),
		[0, 'EOF']
	];
	return pairs.map(([code, value]) => `${code}\r\n${valueText(value)}\r\n`).join('');
}

function section(name: string, pairs: readonly Pair[]): Pair[] {
	return [[0, 'SECTION'], [2, name], ...pairs, [0, 'ENDSEC']];
}

function table(name: string, count: number, pairs: readonly Pair[]): Pair[] {
	return [[0, 'TABLE'], [2, name], [70, count], ...pairs, [0, 'ENDTAB']];
}

function entities(shape: LayoutShape): Pair[] {
	const { layer } = shape;
	switch (shape.kind) {
		case 'circle':
			return [[0, 'CIRCLE'], [8, layer], ...at(shape.x, shape.y), [40, shape.radius]];
		case 'line':
			return line(layer, [shape.x, shape.y], [shape.x2, shape.y2]);
		case 'area':
			return outline(shape);
		default:
			return shape satisfies never;
	}
}

type Spot = readonly [x: number, y: number];

function line(layer: string, [x, y]: Spot, [x2, y2]: Spot): Pair[] {
	return [[0, 'LINE'], [8, layer], ...at(x, y), [11, x2], [21, y2], [31, 0]];
}

/** Four sides, and the corners between them where they are round. */
function outline(shape: Extract<LayoutShape, { kind: 'area' }>): Pair[] {
	const { layer, x, y, length, width, radius: r } = shape;
	const [right, top] = [x + length, y + width];
	const sides = [
		line(layer, [x + r, y], [right - r, y]),
		line(layer, [right, y + r], [right, top - r]),
		line(layer, [right - r, top], [x + r, top]),
		line(layer, [x, top - r], [x, y + r])
	];
	const corners: [number, number, number][] = [
		[x + r, y + r, 180],
		[right - r, y + r, 270],
		[right - r, top - r, 0],
		[x + r, top - r, 90]
	];
	const arcs = corners.map(([cx, cy, from]): Pair[] => [
		[0, 'ARC'],
		[8, layer],
		...at(cx, cy),
		[40, r],
		[50, from],
		[51, from + 90]
	]);
	return [...sides.flat(), ...(r > 0 ? arcs.flat() : [])];
}

/** Names of members at their ends, and what the drawing is. */
function letteringOf(plan: PanelPlan): Pair[] {
	const names = plan.rows.flatMap(({ row, stretches }) => {
		const first = stretches.flat()[0];
		return first ? text(`${row.id} ${row.name}`, first.x + lettering, first.y + lettering) : [];
	});
	return [...text(`${plan.job.name}, inches, training aid only`, 0, -0.3), ...names];
}

function text(words: string, x: number, y: number): Pair[] {
	return [[0, 'TEXT'], [8, 'TEXT'], ...at(x, y), [40, lettering], [1, words]];
}

function at(x: number, y: number): Pair[] {
	return [
		[10, x],
		[20, y],
		[30, 0]
	];
}

/** Numbers without exponent, text without what R12 cannot hold. */
function valueText(value: string | number): string {
	if (typeof value === 'string') return value.replace(/[^\x20-\x7e]/g, '?').replace(/%%/g, '%');
	if (!Number.isFinite(value)) throw new Error('A drawing holds finite numbers only.');
	return String(Math.round(value * 1e6) / 1e6 || 0);
}
