import type { Source } from '../trade/source.ts';
import { cite } from '../trade/documents.ts';
import * as pitches from '../trade/pitches.ts';
import { ruleById } from '../trade/rules.ts';
import type { Filled, FilledRow, Hole } from './holes.ts';
import type { Area, PanelJob } from './job.ts';
import { type EdgeDistances, edgesFor, headSort, type HeadSort } from './rivets.ts';
import { clearOf, flangeOf, inside, insideRounded, slack } from './shape.ts';

/** The worst of many like distances against its limit, all in inches. */
export interface Check {
	/** Row it is about. */
	readonly row: string;
	readonly what: string;
	/** The holes it was measured at. */
	readonly holes: readonly string[];
	readonly value: number;
	readonly limit: number;
	/** Whether the limit is a least one. */
	readonly least: boolean;
	/** How far inside the limit; below zero, how far outside. */
	readonly margin: number;
	/** `undecided`: it holds by less than a scale reads. */
	readonly verdict: 'holds' | 'fails' | 'undecided';
	/** Where the limit stands. */
	readonly source: string;
}

/** A scale reads no finer, inches. */
export const scaleDivision = 1 / 64;

interface Measured {
	readonly holes: readonly string[];
	readonly value: number;
	readonly limit: number;
}

interface Rule {
	readonly what: string;
	readonly least: boolean;
	readonly source: string;
	/** Whether its margin is only as good as the layout. */
	readonly laidOut: boolean;
}

/** Every limit of the plan, the worst of each row. */
export function checksOf(job: PanelJob, flat: Area, filled: Filled): Check[] {
	const head = headSort(job);
	return filled.rows.flatMap((one) => [
		...edgeChecks(job, flat, one, head),
		...pitchChecks(job, one, head),
		...apartCheck(one, filled.holes)
	]);
}

const edgeLeast = sourceOf('edge.least');
const edgeGreatest = sourceOf('edge.greatest');

function edgeChecks(job: PanelJob, flat: Area, { row, stretches }: FilledRow, head: HeadSort) {
	const holes = stretches.flat();
	const own = flangeOf(row.member);
	const others = [
		...job.members
			.filter((one) => one !== row.member)
			.map((one) => [one.name, flangeOf(one)] as const),
		...job.doublers.map((one) => [one.name, one] as const)
	];
	const least = (what: string, distance: (hole: Hole) => number) =>
		worst(row.name, { what, least: true, source: edgeLeast, laidOut: true }, holes, (hole) => ({
			holes: [hole.id],
			value: distance(hole),
			limit: edges(hole, head).least
		}));
	const greatest = (what: string, among: readonly Hole[], distance: (hole: Hole) => number) =>
		worst(
			row.name,
			{ what, least: false, source: edgeGreatest, laidOut: false },
			among,
			(hole) => ({
				holes: [hole.id],
				value: distance(hole),
				limit: edges(hole, head).greatest
			})
		);
	const ends = [holes[0], holes.at(-1)].filter((one) => one !== undefined);
	return [
		...least('panel edge', (hole) =>
			insideRounded(flat, job.bends.length > 0 ? 0 : job.cornerRadius, hole)
		),
		...least('flange edge', (hole) => inside(own, hole)),
		...(row.lead ? [] : greatest('flange side', holes, (hole) => sideOf(row, hole))),
		...(row.lead ? [] : greatest('member end', ends, (hole) => endOf(row, hole))),
		...job.cutouts.flatMap((one) => least(one.name, (hole) => clearOf(one, hole)).filter(isNear)),
		...others.flatMap(([name, area]) =>
			least(`edge of ${name}`, (hole) => Math.abs(inside(area, hole))).filter(isNear)
		)
	];
}

/** What is far from a limit is not worth a line. */
function isNear({ value, limit }: Check): boolean {
	return value < 2 * limit;
}

function edges({ rivet }: Hole, head: HeadSort): EdgeDistances {
	return edgesFor(rivet.diameter, head);
}

/** From a hole to the nearer side of the flange. */
function sideOf({ member, runs }: FilledRow['row'], hole: Hole): number {
	return member.flange / 2 - Math.abs((runs === 'across' ? hole.x : hole.y) - member.at);
}

function endOf({ from, to, runs }: FilledRow['row'], hole: Hole): number {
	const s = runs === 'across' ? hole.y : hole.x;
	return Math.min(s - from, to - s);
}

function pitchChecks(
	{ greatestPitch }: PanelJob,
	{ row, stretches }: FilledRow,
	head: HeadSort
): Check[] {
	const spaces = stretches.flatMap((stretch) =>
		stretch.slice(1).map((hole, i) => {
			const before = stretch[i] ?? hole;
			return {
				holes: [before.id, hole.id],
				value: Math.hypot(hole.x - before.x, hole.y - before.y)
			};
		})
	);
	const closest = pitches.leastPitch(head, row.rows, row.D);
	const byRule = pitches.greatestPitch * row.D;
	// Holes that were there before were laid out by somebody else’s pitch.
	const entered = row.member.drilled === null ? (greatestPitch ?? Infinity) : Infinity;
	const widest = Math.min(byRule, entered);
	const source = entered < byRule ? 'as entered' : cite(pitches.greatestPitchSource);
	return [
		...worst(
			row.name,
			{
				what: 'pitch',
				least: true,
				source: cite(pitches.leastPitchSource),
				laidOut: false
			},
			spaces,
			(space) => ({ ...space, limit: closest })
		),
		...worst(
			row.name,
			{ what: 'pitch', least: false, source, laidOut: false },
			spaces,
			(space) => ({ ...space, limit: widest })
		)
	];
}

/** From each hole of the row to the nearest one of another row. */
function apartCheck({ row, stretches }: FilledRow, all: readonly Hole[]): Check[] {
	const own = stretches.flat();
	const others = all.filter((hole) => !hole.rows.includes(row));
	return worst(
		row.name,
		{
			what: 'hole of another row',
			least: true,
			source: cite(pitches.leastApartSource),
			laidOut: true
		},
		own,
		(hole) => {
			const limit = pitches.leastApart * hole.rivet.diameter;
			let nearest: Measured | null = null;
			for (const other of others) {
				const [dx, dy] = [other.x - hole.x, other.y - hole.y];
				// Farther ones say nothing.
				if (Math.abs(dx) > 2 * limit || Math.abs(dy) > 2 * limit) continue;
				const value = Math.hypot(dx, dy);
				const bound = Math.max(limit, pitches.leastApart * other.rivet.diameter);
				if (!nearest || value - bound < nearest.value - nearest.limit) {
					nearest = { holes: [hole.id, other.id], value, limit: bound };
				}
			}
			return nearest;
		}
	);
}

function worst<T>(
	row: string,
	{ what, least, source, laidOut }: Rule,
	among: readonly T[],
	measure: (one: T) => Measured | null
): Check[] {
	let found: Measured | null = null;
	const marginOf = ({ value, limit }: Measured) => (least ? value - limit : limit - value);
	for (const one of among) {
		const measured = measure(one);
		if (measured && (!found || marginOf(measured) < marginOf(found) - slack)) found = measured;
	}
	if (!found) return [];
	const margin = marginOf(found);
	const near = laidOut && margin < scaleDivision - slack ? 'undecided' : 'holds';
	return [
		{ row, what, ...found, least, margin, verdict: margin < -slack ? 'fails' : near, source }
	];
}

function sourceOf(id: string): string {
	const [first] = ruleById(id).sources as readonly Source[];
	return first ? cite(first) : '';
}
