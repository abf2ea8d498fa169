import { developedWidth } from '../methods/developed-width.ts';
import { leastBendRadius } from '../methods/least-bend-radius.ts';
import { evaluate } from '../solver/evaluate.ts';
import { brokenLimit } from '../solver/limits.ts';
import { TradeError } from '../solver/trade-function.ts';
import { isList } from '../quantity/value.ts';
import type { Bend, Edge, PanelJob, Problem } from './job.ts';
import { numberAt } from './rivets.ts';
import { gaugeText, inchesText } from './write.ts';

/** One way across the panel, flat out: before trim. */
export interface Developed {
	/** Whole developed length or width, inches. */
	readonly size: number;
	/** Setback at the near and the far edge, 0 where it is not bent. */
	readonly setbacks: readonly [near: number, far: number];
	/** What a place on the panel, from the mold line, has added on the flat sheet. */
	readonly shift: number;
	/** Bent leg and bend on the flat sheet, at the near and the far edge. */
	readonly strips: readonly [near: number, far: number];
	/** Bend tangent lines on the flat sheet, begin and end of each bend. */
	readonly bends: readonly (readonly [number, number])[];
}

/** The panel laid flat both ways, and the bends that could be worked. */
export interface Flat {
	readonly along: Developed;
	readonly across: Developed;
}

const none = [0, 0] as const;
const sides = { along: ['left', 'right'], across: ['bottom', 'top'] } as const;

export function layFlat(job: PanelJob, problems: Problem[]): Flat {
	const good = job.bends.filter((bend) => canBend(job, bend, problems));
	return {
		along: developed(job, job.length, good, sides.along, problems),
		across: developed(job, job.width, good, sides.across, problems)
	};
}

/** Setback at each edge. */
export function setbacksOf({ along, across }: Flat): Record<Edge, number> {
	const [left, right] = along.setbacks;
	const [bottom, top] = across.setbacks;
	return { left, right, bottom, top };
}

function canBend({ thickness, alloy }: PanelJob, bend: Bend, problems: Problem[]): boolean {
	const name = `Bend at the ${bend.edge} edge`;
	if (thickness === null) return false;
	try {
		const least = numberAt(evaluate(leastBendRadius, { alloy, T: thickness }), 'radius');
		if (bend.radius < least - 1e-9) {
			problems.push({
				field: `${bend.field}.radius`,
				says: `${name}, radius: ${inchesText(bend.radius)} is under the minimum for ${alloy}, ${gaugeText(least)}; make it larger.`
			});
		}
	} catch (error) {
		if (!(error instanceof TradeError)) throw error;
		problems.push({
			field: `${bend.field}.radius`,
			says: `${name}, least radius: ${error.message}`
		});
	}
	return true;
}

/** One way across, by the method for a bent part: near leg, panel, far leg. */
function developed(
	job: PanelJob,
	size: number,
	bends: readonly Bend[],
	[nearEdge, farEdge]: readonly [Edge, Edge],
	problems: Problem[]
): Developed {
	const near = bends.find(({ edge }) => edge === nearEdge);
	const far = bends.find(({ edge }) => edge === farEdge);
	const both = [near, far].filter((one) => one !== undefined);
	const plain = { size, setbacks: none, shift: 0, strips: none, bends: [] };
	const [first] = both;
	if (!first || job.thickness === null) return plain;
	if (both.some(({ radius }) => radius !== first.radius)) {
		problems.push({
			field: 'bends',
			says: `The ${nearEdge} and ${farEdge} edges have different bend radii; ${inchesText(first.radius)} is used for both.`
		});
	}
	const legs = [...(near ? [near.leg] : []), size, ...(far ? [far.leg] : [])];
	const angles = both.map(({ angle }) => angle);
	try {
		const values = evaluate(developedWidth, { R: first.radius, T: job.thickness, legs, angles });
		const broken = brokenLimit(developedWidth, values);
		if (broken) throw new TradeError(broken);
		const [setbacks, flats, allowances] = [values.setbacks, values.flats, values.allowances].map(
			(value) => (isList(value) ? value.map(Number) : [])
		) as [number[], number[], number[]];
		return laidFlat(numberAt(values, 'width'), Boolean(near), setbacks, flats, allowances);
	} catch (error) {
		if (!(error instanceof TradeError)) throw error;
		problems.push({
			field: 'bends',
			says: `${both.length > 1 ? `Bends at the ${nearEdge} and ${farEdge} edges` : `Bend at the ${first.edge} edge`}: ${error.message}`
		});
		return plain;
	}
}

/** @param near whether the near edge is bent: then the first bend is there */
function laidFlat(
	size: number,
	near: boolean,
	setbacks: readonly number[],
	flats: readonly number[],
	allowances: readonly number[]
): Developed {
	const bends: (readonly [number, number])[] = [];
	let place = 0;
	allowances.forEach((allowance, i) => {
		place += flats[i] ?? 0;
		bends.push([place, place + allowance]);
		place += allowance;
	});
	const far = setbacks.length > (near ? 1 : 0);
	const own = near ? (setbacks[0] ?? 0) : 0;
	const nearStrip = near ? (bends[0]?.[1] ?? 0) : 0;
	return {
		size,
		setbacks: [own, far ? (setbacks.at(-1) ?? 0) : 0],
		shift: nearStrip - own,
		strips: [nearStrip, far ? size - (bends.at(-1)?.[0] ?? size) : 0],
		bends
	};
}
