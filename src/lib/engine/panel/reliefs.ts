import { cite } from '../trade/documents.ts';
import { reliefDiameter, reliefSource } from '../trade/relief-holes.ts';
import type { Area, Bend, Cutout, Edge, PanelJob, Problem } from './job.ts';
import { gaugeText, inchesText } from './write.ts';

/** A hole where two bends meet, centred where their inner tangent lines cross. */
export type Relief = Extract<Cutout, { readonly round: true }>;

const corners = [
	['bottom', 'left'],
	['bottom', 'right'],
	['top', 'left'],
	['top', 'right']
] as const;

/**
 * Relief holes of the corners that are bent on both sides.
 *
 * @param flat the part of the panel between its bend tangent lines
 */
export function reliefsOf(job: PanelJob, flat: Area, problems: Problem[]): Relief[] {
	const { thickness, bends } = job;
	if (thickness === null) return [];
	const at = (edge: Edge) => bends.find((one) => one.edge === edge);
	return corners.flatMap(([level, side]) => {
		const [one, other] = [at(level), at(side)];
		if (!one || !other) return [];
		const diameter = diameterFor(one, other, thickness);
		const name = `relief hole, ${level} ${side}`;
		if (diameter === null) {
			const says = `No document tells how large a ${name} in ${gaugeText(thickness)} must be: ask.`;
			problems.push({ field: 'bends', says });
			return [];
		}
		const x = side === 'left' ? flat.x : flat.x + flat.length;
		const y = level === 'bottom' ? flat.y : flat.y + flat.width;
		return [{ name, round: true, x, y, diameter } as const];
	});
}

function diameterFor(one: Bend, other: Bend, thickness: number): number | null {
	return reliefDiameter(Math.max(one.radius, other.radius), thickness);
}

/** What is said of relief holes; nothing where there are none. */
export function reliefNotes(reliefs: readonly Relief[]): string[] {
	const sizes = [...new Set(reliefs.map(({ diameter }) => diameter))].sort((a, b) => a - b);
	if (sizes.length === 0) return [];
	return [
		`Where two bends meet, drill a relief hole of ${sizes.map(inchesText).join(' or ')} where their inner tangent lines cross, before you bend; trim the corner to it (${cite(reliefSource)}).`
	];
}
