import { loadReader } from '../quantity/reader.ts';
import { cite } from '../trade/documents.ts';
import { sameGauge } from '../trade/gauges.ts';
import { source } from '../trade/source.ts';
import { sheetThicknesses } from '../trade/stock.ts';
import { type Flat, layFlat, setbacksOf } from './bent-edges.ts';
import { areaOf, type Blank, blankOf, type OnStock, onStock, weightOf } from './blank.ts';
import { type Check, checksOf } from './checks.ts';
import { crossingsOf, type Met } from './crossings.ts';
import { type Filled, fill } from './holes.ts';
import type { Area, PanelJob, Problem } from './job.ts';
import { orderOfWork, type WorkStep } from './order.ts';
import { PanelError, readPanel } from './read-panel.ts';
import { type Relief, reliefNotes, reliefsOf } from './reliefs.ts';
import { diameterFor } from './rivets.ts';
import { rowsOf } from './rows.ts';
import { flangeOf, flatPart, slack } from './shape.ts';
import { stationsOf } from './stations.ts';
import {
	cautionsFor,
	clamps,
	type DrillUse,
	drillUses,
	type Flush,
	flushHeads,
	type RivetCount,
	rivetCounts,
	sheetHolders
} from './work.ts';
import { gaugeText, inchesText } from './write.ts';

/** A panel worked out, in inches and pounds. */
export interface PanelPlan extends Filled {
	readonly job: PanelJob;
	/** Part of the panel that is not bent. */
	readonly flat: Area;
	readonly rivets: readonly RivetCount[];
	readonly drills: readonly DrillUse[];
	readonly checks: readonly Check[];
	readonly blank: Blank;
	/** Where two bends meet. */
	readonly reliefs: readonly Relief[];
	/** Square inches of the finished panel. */
	readonly area: number;
	/** Null where it cannot be told. */
	readonly weight: number | null;
	readonly stock: OnStock | null;
	readonly flush: readonly Flush[];
	readonly holders: readonly string[];
	readonly clamps: readonly string[];
	readonly order: readonly WorkStep[];
	readonly cautions: readonly string[];
	/** What is good to know and no fault. */
	readonly notes: readonly string[];
	readonly problems: readonly Problem[];
}

/**
 * Works out a panel from its file, whatever the file holds; what cannot be worked is told.
 *
 * @throws PanelError where the panel has no size
 */
export async function planPanel(raw: unknown): Promise<PanelPlan> {
	if (!(await loadReader())) throw new PanelError('The reader could not be loaded; try again.');
	const { job, problems: unread } = readPanel(raw);
	const problems = [...unread, ...gaugeProblems(job), ...overhangs(job)];
	const laid = layFlat(job, problems);
	const flat = flatPart(job, setbacksOf(laid));
	const reliefs = reliefsOf(job, flat, problems);
	// Rows keep as clear of a relief hole as of any opening.
	const open = { ...job, cutouts: [...job.cutouts, ...reliefs] };
	const rows = rowsOf(job, flat, problems);
	const met = crossingsOf(open, rows);
	const filled = fill(open, stationsOf(open, rows, met), problems);
	const checks = checksOf(open, flat, filled);
	const flush = flushHeads(job, filled.holes);
	const drills = drillUses(filled.holes, problems);
	problems.push(...emptyProblems(filled, job), ...checks.flatMap(checkProblem));
	return {
		...filled,
		...sheetOf(job, laid, problems),
		job,
		flat,
		reliefs,
		checks,
		flush,
		drills,
		rivets: rivetCounts(filled.holes),
		holders: sheetHolders(filled),
		clamps: clamps(filled.rows),
		order: orderOfWork(job, filled, flush),
		cautions: cautionsFor(job),
		notes: [
			...memberNotes(job),
			...diameterNotes(filled, job),
			...barredNotes(met),
			...openingNotes(job),
			...bendNotes(job),
			...reliefNotes(reliefs)
		],
		problems
	};
}

function sheetOf(job: PanelJob, laid: Flat, problems: Problem[]) {
	const blank = blankOf(job, laid);
	const area = areaOf(job, laid);
	return {
		blank,
		area,
		weight: weightOf(area, job, problems),
		stock: onStock(job, blank, problems)
	};
}

/** Thicknesses that no sheet comes in; they are worked with as they stand. */
function gaugeProblems({ thickness, members, doublers }: PanelJob): Problem[] {
	const all = [{ name: 'Panel', field: 'panel', thickness }, ...members, ...doublers];
	return all.flatMap(({ name, field, thickness: T }) => {
		if (T === null || sheetThicknesses.some((one) => Math.abs(one - sameGauge(T)) < slack))
			return [];
		const near = [...sheetThicknesses]
			.sort((a, b) => Math.abs(a - T) - Math.abs(b - T))
			.slice(0, 2);
		const names = near
			.sort((a, b) => a - b)
			.map(gaugeText)
			.join(' and ');
		return [
			{
				field: `${field}.thickness`,
				says: `${name}, thickness: ${gaugeText(T)} is in no gauge table; the nearest are ${names}.`
			}
		];
	});
}

/** Flanges that hang over an edge of the panel. */
function overhangs({ members, length, width }: PanelJob): Problem[] {
	return members.flatMap((member) => {
		const { x, y, length: along, width: across } = flangeOf(member);
		const sides =
			member.runs === 'across'
				? ([
						['left', -x],
						['right', x + along - length]
					] as const)
				: ([
						['lower', -y],
						['upper', y + across - width]
					] as const);
		return sides
			.filter(([, over]) => over > slack)
			.map(([edge, over]) => ({
				field: `${member.field}.at`,
				says: `${member.name}: its flange hangs ${inchesText(over)} over the ${edge} edge of the panel; move it inward, or ask.`
			}));
	});
}

function emptyProblems({ rows }: Filled, { greatestPitch }: PanelJob): Problem[] {
	if (greatestPitch === null) return [];
	return rows
		.filter(({ stretches }) => stretches.every((one) => one.length === 0))
		.map(({ row }) => ({
			field: `${row.member.field}.at`,
			says: `${row.name}: there is no room for a hole between its margins.`
		}));
}

function checkProblem({ row, what, holes, value, limit, least, verdict }: Check): Problem[] {
	if (verdict !== 'fails') return [];
	const sort = least ? 'minimum' : 'maximum';
	const says = `${row}, ${what}: ${inchesText(value)} at ${holes.join(' to ')} is ${least ? 'under' : 'over'} the ${sort}, ${inchesText(limit)}.`;
	return [{ field: 'members', says }];
}

function memberNotes({ members }: PanelJob): string[] {
	if (members.length > 0) return [];
	return ['The panel has no members, so no holes are laid out: add its frames and stringers.'];
}

/** One diameter a row: said where some of its stacks would have gone by a smaller one. */
function diameterNotes({ rows }: Filled, { rivet }: PanelJob): string[] {
	if (rivet.diameter !== null) return [];
	const mixed = rows.filter(({ row, stretches }) => {
		const thickest = new Set(stretches.flat().map(({ layers }) => Math.max(...layers)));
		return [...thickest].some((T) => diameterFor([T]) < row.D - slack);
	});
	if (mixed.length === 0) return [];
	const rowsAre = mixed.map(({ row }) => `${row.name} ${inchesText(row.D)}`).join(', ');
	return [
		`A row has one rivet diameter, the largest that one of its stacks wants: ${rowsAre}. Ask where its thin stacks want a smaller one.`
	];
}

const openingSource = source('airframe', 'ch. 4, p. 4-86');

function openingNotes({ cutouts }: PanelJob): string[] {
	if (cutouts.every(({ round }) => round)) return [];
	return [
		`Round the corners of an opening to a radius of 1/2 in or more (${cite(openingSource)}).`
	];
}

function barredNotes({ barred }: Met): string[] {
	return barred.map(
		({ row, by }) =>
			`${by.name} is drilled and has no hole on the line of ${row.name}, so none is laid out there: ask whether one may be drilled.`
	);
}

function bendNotes({ bends }: PanelJob): string[] {
	if (bends.length === 0) return [];
	return ['Rows keep the minimum edge distance from a bend tangent line, as from an edge.'];
}
