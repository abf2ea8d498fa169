import { panelVersion } from './fields.ts';
import type { Hole } from './holes.ts';
import type { PanelPlan } from './plan.ts';
import { rounded } from './write.ts';

/** A hole as every table, drawing and file tells it; inches, rounded to millionths. */
export interface HoleRow {
	readonly id: string;
	readonly x: number;
	readonly y: number;
	readonly row: string;
	/** The other row that it serves, or null. */
	readonly crosses: string | null;
	/** Thickness of every layer, from the manufactured head on. */
	readonly layers: readonly number[];
	readonly parts: readonly string[];
	readonly grip: number;
	readonly diameter: number;
	readonly rivet: string;
}

export function holeRow({ id, x, y, rows, layers, parts, rivet }: Hole): HoleRow {
	return {
		id,
		x: rounded(x),
		y: rounded(y),
		row: rows[0]?.name ?? '',
		crosses: rows[1]?.name ?? null,
		layers: layers.map(rounded),
		parts,
		grip: rounded(rivet.grip),
		diameter: rivet.diameter,
		rivet: rivet.number
	};
}

/** A piece to cut from sheet. */
export interface CutPiece {
	readonly name: string;
	readonly length: number;
	readonly width: number;
	readonly thickness: number | null;
}

export function cutList({ job, blank }: PanelPlan): CutPiece[] {
	const { length, width } = blank;
	return [
		{ name: job.name, length: rounded(length), width: rounded(width), thickness: job.thickness },
		...job.doublers.map((one) => ({
			name: one.name,
			length: rounded(one.length),
			width: rounded(one.width),
			thickness: one.thickness
		}))
	];
}

/** The plan for scripts; its keys are documented and stay. Inches, pounds and square inches. */
export function planData(plan: PanelPlan) {
	const { blank, stock, weight } = plan;
	return {
		version: panelVersion,
		holes: plan.holes.map(holeRow),
		rivets: plan.rivets,
		drills: plan.drills,
		limits: plan.checks.map((one) => ({
			...one,
			value: rounded(one.value),
			limit: rounded(one.limit),
			margin: rounded(one.margin)
		})),
		blank: {
			length: rounded(blank.length),
			width: rounded(blank.width),
			trim: rounded(blank.trim),
			developed: {
				length: rounded(blank.developed.length),
				width: rounded(blank.developed.width)
			},
			origin: { x: rounded(blank.origin.x), y: rounded(blank.origin.y) },
			bendLines: { x: blank.bendLines.x.map(rounded), y: blank.bendLines.y.map(rounded) }
		},
		reliefs: plan.reliefs.map(({ x, y, diameter }) => ({
			x: rounded(x),
			y: rounded(y),
			diameter: rounded(diameter)
		})),
		stock: stock && { ...stock, x: 0, y: 0 },
		area: rounded(plan.area),
		weight: weight === null ? null : rounded(weight),
		cut: cutList(plan),
		flush: plan.flush,
		holders: plan.holders,
		clamps: plan.clamps,
		order: plan.order.map(({ says }) => says),
		cautions: plan.cautions,
		notes: plan.notes,
		problems: plan.problems.map(({ says }) => says)
	};
}
