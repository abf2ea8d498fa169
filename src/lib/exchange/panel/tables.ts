import type { PanelPlan } from '../../engine/panel/plan.ts';
import { cutList, holeRow } from '../../engine/panel/report.ts';
import { type Cell, writeCsv } from '../csv.ts';

/** The lists of a panel, by the name they are asked for. */
export const panelLists = ['holes', 'rivets', 'drills', 'cut'] as const;
export type PanelList = (typeof panelLists)[number];

/** One list as CSV. Inches. */
export function writePanelCsv(plan: PanelPlan, list: PanelList = 'holes'): string {
	return writeCsv(rowsOf[list](plan));
}

const rowsOf: Readonly<Record<PanelList, (plan: PanelPlan) => Cell[][]>> = {
	holes: ({ holes, drills }) => {
		const drillOf = new Map(drills.map((one) => [one.rivet, one]));
		return [
			['hole', 'x', 'y', 'row', 'crosses', 'layers', 'grip', 'rivet', 'pilot', 'final'],
			...holes
				.map(holeRow)
				.map((one): Cell[] => [
					one.id,
					one.x,
					one.y,
					one.row,
					one.crosses,
					one.layers.join('; '),
					one.grip,
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
	drills: ({ drills }) => [
		['rivet diameter', 'pilot', 'pilot inches', 'final', 'final inches', 'holes'],
		...drills.map((one) => [
			one.rivet,
			one.pilotName,
			one.pilot,
			one.finalName,
			one.final,
			one.holes
		])
	],
	cut: (plan) => [
		['piece', 'length', 'width', 'thickness'],
		...cutList(plan).map(({ name, length, width, thickness }) => [name, length, width, thickness])
	]
};
