import type { PanelPlan } from '../../engine/panel/plan.ts';
import { cutList, holeRow } from '../../engine/panel/report.ts';
import type { LengthUnit } from '../../engine/quantity/value.ts';
import { type Cell, writeCsv } from '../csv.ts';

/** The lists of a panel, by the name they are asked for. */
export const panelLists = ['holes', 'rivets', 'drills', 'cut'] as const;
export type PanelList = (typeof panelLists)[number];

/** One list as CSV. Inches, or millimetres with `mm` in the heads of their columns. */
export function writePanelCsv(
	plan: PanelPlan,
	list: PanelList = 'holes',
	units: LengthUnit = 'in'
): string {
	return writeCsv(rowsOf[list](plan, units === 'mm' ? inMillimetres : inInches));
}

/** How lengths and the heads of their columns are written. */
interface Sizes {
	size(inches: number): number;
	head(name: string): string;
}

const inInches: Sizes = { size: (inches) => inches, head: (name) => name };
const inMillimetres: Sizes = {
	size: (inches) => Math.round(inches * 25.4e3) / 1e3,
	head: (name) => `${name.replace(/ inches$/, '')} mm`
};

const rowsOf: Readonly<Record<PanelList, (plan: PanelPlan, sizes: Sizes) => Cell[][]>> = {
	holes: ({ holes, drills }, { size, head }) => {
		const drillOf = new Map(drills.map((one) => [one.rivet, one]));
		return [
			[
				'hole',
				...['x', 'y'].map(head),
				'row',
				'crosses',
				...['layers', 'grip'].map(head),
				'rivet',
				'pilot',
				'final'
			],
			...holes
				.map(holeRow)
				.map((one): Cell[] => [
					one.id,
					size(one.x),
					size(one.y),
					one.row,
					one.crosses,
					one.layers.map(size).join('; '),
					size(one.grip),
					one.rivet,
					drillOf.get(one.diameter)?.pilotName ?? null,
					drillOf.get(one.diameter)?.finalName ?? null
				])
		];
	},
	rivets: ({ rivets }) => [
		['rivet', 'holes', 'spares', 'take'],
		...rivets.map(({ number, count, spares }) => [number, count, spares, count + spares])
	],
	drills: ({ drills }, { size, head }) => [
		[head('rivet diameter'), 'pilot', head('pilot inches'), 'final', head('final inches'), 'holes'],
		...drills.map((one) => [
			size(one.rivet),
			one.pilotName,
			size(one.pilot),
			one.finalName,
			size(one.final),
			one.holes
		])
	],
	cut: (plan, { size, head }) => [
		['piece', ...['length', 'width', 'thickness'].map(head)],
		...cutList(plan).map(({ name, length, width, thickness }) => [
			name,
			size(length),
			size(width),
			thickness === null ? null : size(thickness)
		])
	]
};
