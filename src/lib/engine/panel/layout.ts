import type { Area } from './job.ts';
import type { PanelPlan } from './plan.ts';
import { holeRow } from './report.ts';
import { drillsFor } from './rivets.ts';
import { flangeOf } from './shape.ts';
import { rounded } from './write.ts';

/*
 * The panel as shapes in inches, from its lower left corner, y up: what the page, the print, SVG
 * and DXF draw.
 */

export type LayoutLayer = 'PANEL' | 'CUTOUTS' | 'DOUBLERS' | 'MEMBERS' | 'BENDS' | 'ROWS' | 'HOLES';

export type LayoutShape =
	| ({ readonly kind: 'area'; readonly radius: number } & Area & OnLayer)
	| ({ readonly kind: 'circle'; readonly radius: number } & At & OnLayer)
	| ({ readonly kind: 'line'; readonly x2: number; readonly y2: number } & At & OnLayer);

interface At {
	readonly x: number;
	readonly y: number;
}

interface OnLayer {
	readonly layer: LayoutLayer;
	/** Hole or part that it is; empty where it has no name. */
	readonly name: string;
}

export function layoutOf(plan: PanelPlan): LayoutShape[] {
	const { job, flat } = plan;
	const area = (layer: LayoutLayer, name: string, { x, y, length, width }: Area, radius = 0) =>
		({
			kind: 'area',
			layer,
			name,
			x: rounded(x),
			y: rounded(y),
			length: rounded(length),
			width: rounded(width),
			radius
		}) as const;
	const whole = { x: 0, y: 0, length: job.length, width: job.width };
	const bent = job.bends.length > 0;
	return [
		area('PANEL', job.name, whole, bent ? 0 : job.cornerRadius),
		...(bent ? [area('BENDS', 'bend tangent lines', flat)] : []),
		...job.members.map((one) => area('MEMBERS', one.name, flangeOf(one))),
		...job.doublers.map((one) => area('DOUBLERS', one.name, one)),
		...[...job.cutouts, ...plan.reliefs].map((one) =>
			one.round
				? circle('CUTOUTS', one.name, one, one.diameter / 2)
				: area('CUTOUTS', one.name, one)
		),
		...rowLines(plan),
		...plan.holes.map((hole) => {
			const { id, x, y } = holeRow(hole);
			return circle('HOLES', id, { x, y }, holeSize(hole.rivet.diameter) / 2);
		})
	];
}

function circle(layer: LayoutLayer, name: string, { x, y }: At, radius: number): LayoutShape {
	return { kind: 'circle', layer, name, x: rounded(x), y: rounded(y), radius: rounded(radius) };
}

function rowLines({ rows }: PanelPlan): LayoutShape[] {
	return rows.map(({ row }): LayoutShape => {
		const [from, to] = [rounded(row.from), rounded(row.to)];
		const at = rounded(row.at);
		const ends =
			row.runs === 'across'
				? { x: at, y: from, x2: at, y2: to }
				: { x: from, y: at, x2: to, y2: at };
		return { kind: 'line', layer: 'ROWS', name: row.id, ...ends };
	});
}

/** Final drill of a rivet; the rivet itself where no table has one. */
function holeSize(D: number): number {
	try {
		return drillsFor(D).final;
	} catch {
		return D;
	}
}
