import { rivetRow } from '../methods/rivet-row.ts';
import { isList } from '../quantity/value.ts';
import { evaluate } from '../solver/evaluate.ts';
import { leastApart, leastPitch } from '../trade/pitches.ts';
import { along, type Crossing, isClear, type Met } from './crossings.ts';
import type { PanelJob } from './job.ts';
import { edgesFor, headSort } from './rivets.ts';
import type { Row } from './rows.ts';
import { blockedBy, slack } from './shape.ts';

/** A hole of a row by its place along it. */
export interface Station {
	readonly s: number;
	/** The crossing that it stands on. */
	readonly crossing: Crossing | null;
}

/** Holes of a row without an opening between them. */
export type Stretch = readonly Station[];

/** More holes in a row than this are not laid out. */
export const mostInRow = 1000;

type Span = readonly [from: number, to: number];

/**
 * The holes of every row, in stretches. A row is fixed at its ends, at its crossings and beside
 * openings; between, it is divided evenly.
 *
 * @returns null for a row that would have too many holes
 */
export function stationsOf(
	job: PanelJob,
	rows: readonly Row[],
	met: Met
): ReadonlyMap<Row, readonly Stretch[] | null> {
	const found = new Map<Row, readonly Stretch[] | null>();
	for (const row of rows) {
		const lead = row.lead && found.get(row.lead);
		if (row.lead) found.set(row, lead ? second(job, row, lead, met) : null);
		else if (row.member.drilled) found.set(row, [drilledStations(row, row.member.drilled, met)]);
		else found.set(row, laidOut(job, row, rows, met));
	}
	return found;
}

function crossingsOn(row: Row, { crossings }: Met): Station[] {
	return crossings
		.filter((one) => one.across === row || one.along === row)
		.map((crossing) => ({ s: along(crossing, row), crossing }));
}

function drilledStations(row: Row, drilled: readonly number[], met: Met): Station[] {
	const shared = crossingsOn(row, met);
	return drilled.map((s) => shared.find((one) => one.s === s) ?? { s, crossing: null });
}

/**
 * A second row: midway between the holes of the first. Where other rows cross it, it has a hole that
 * serves both, and is divided evenly from there on.
 */
function second(
	job: PanelJob,
	row: Row,
	lead: readonly Stretch[],
	met: Met
): readonly Stretch[] | null {
	const shared = crossingsOn(row, met);
	const closest = leastPitch(headSort(job), row.rows, row.D);
	const stretches = lead
		.flatMap((one) => midway(job, row, one))
		.map((stretch) => {
			const [from, to] = [stretch[0]?.s ?? 0, stretch.at(-1)?.s ?? 0];
			const held = shared.filter(({ s }) => s > from - slack && s < to + slack);
			if (held.length === 0) return stretch;
			return divide(fixedIn([from, to], held, closest), job.greatestPitch ?? 0);
		});
	return stretches.every((one) => one !== null) ? stretches : null;
}

/** Midway between the holes of the first row, where that is clear of openings. */
function midway(job: PanelJob, row: Row, lead: Stretch): Stretch[] {
	const { least } = edgesFor(row.D, headSort(job));
	const stretches: Station[][] = [[]];
	for (const [i, { s }] of lead.slice(1).entries()) {
		const middle = (s + (lead[i]?.s ?? s)) / 2;
		if (isClear(job, row, middle, least)) stretches.at(-1)?.push({ s: middle, crossing: null });
		else stretches.push([]);
	}
	return stretches.filter((one) => one.length > 0);
}

function laidOut(
	job: PanelJob,
	row: Row,
	rows: readonly Row[],
	met: Met
): readonly Stretch[] | null {
	const { greatestPitch } = job;
	if (greatestPitch === null) return [];
	const { least } = edgesFor(row.D, headSort(job));
	const closest = leastPitch(headSort(job), row.rows, row.D);
	const shared = crossingsOn(row, met);
	const spare = Math.max(row.margin - least, 0) + slack;
	const spans = freeSpans(job, row, met, least).map((span) => clearOfRows(span, row, rows, shared));
	const stretches: Station[][] = spans.map(([from, to]) => {
		const held = shared.filter(({ s }) => s >= from - spare && s <= to + spare);
		return fixedIn([from, to], held, closest);
	});
	const taken = new Set(stretches.flat().map(({ crossing }) => crossing));
	const alone = shared.filter(({ crossing }) => !taken.has(crossing)).map((one) => [one]);
	const all = [...stretches, ...alone]
		.filter((one) => one.length > 0)
		.sort((a, b) => (a[0]?.s ?? 0) - (b[0]?.s ?? 0));
	const divided = all.map((fixed) => divide(fixed, greatestPitch));
	return divided.every((one) => one !== null) ? divided : null;
}

/** The row between its end margins, less what openings and drilled flanges bar. */
function freeSpans(job: PanelJob, row: Row, { barred }: Met, least: number): Span[] {
	const bars = [
		...job.cutouts.map((one) => blockedBy(one, row.runs, row.at, row.margin)),
		...barred
			.filter((one) => one.row === row)
			.map(({ by: { member } }): Span => {
				const half = member.flange / 2 + least;
				return [member.at - half, member.at + half];
			})
	].filter((one) => one !== null);
	let spans: Span[] = [[row.from + row.margin, row.to - row.margin]];
	for (const [from, to] of bars) {
		spans = spans.flatMap(([low, high]): Span[] =>
			to <= low || from >= high
				? [[low, high]]
				: [
						[low, from],
						[to, high]
					]
		);
	}
	return spans.filter(([from, to]) => to - from >= -slack);
}

/** Ends moved inward from a line they stand beside and share no hole with. */
function clearOfRows(
	[from, to]: Span,
	row: Row,
	rows: readonly Row[],
	shared: readonly Station[]
): Span {
	const room = leastApart * row.D;
	const lines = rows
		.filter((one) => one.runs !== row.runs && row.at >= one.from && row.at <= one.to)
		.map(({ at }) => at)
		.filter((at) => !shared.some(({ s }) => Math.abs(s - at) < room));
	const beside = (end: number) => lines.find((at) => Math.abs(end - at) < room - slack);
	const [low, high] = [beside(from), beside(to)];
	const moved: Span = [
		low === undefined ? from : low + room,
		high === undefined ? to : high - room
	];
	return moved[0] <= moved[1] ? moved : [from, to];
}

/** The holes that a stretch must have: its ends and its crossings; an end too near a crossing goes. */
function fixedIn([from, to]: Span, held: readonly Station[], closest: number): Station[] {
	const crossed = [...held].sort((a, b) => a.s - b.s);
	const [first, last] = [crossed[0], crossed.at(-1)];
	if (!first || !last) {
		if (to - from < closest - slack) return [{ s: (from + to) / 2, crossing: null }];
		return [from, to].map((s) => ({ s, crossing: null }));
	}
	const starts = first.s - from >= closest - slack ? [{ s: from, crossing: null }] : [];
	const ends = to - last.s >= closest - slack ? [{ s: to, crossing: null }] : [];
	return [...starts, ...crossed, ...ends];
}

/** Equal spaces between fixed holes; null for more than anybody drills. */
function divide(fixed: readonly Station[], greatestPitch: number): Station[] | null {
	const all = fixed.slice(0, 1);
	for (const [i, next] of fixed.slice(1).entries()) {
		const start = fixed[i]?.s ?? next.s;
		const length = next.s - start;
		if (length / greatestPitch > mostInRow) return null;
		if (length < slack) {
			// Two members at one place: their holes are told to be too near.
			all.push(next);
			continue;
		}
		const { positions } = evaluate(rivetRow, { length, endMargin: 0, greatestPitch });
		const places = isList(positions) ? positions.map(Number) : [];
		all.push(...places.slice(1, -1).map((s) => ({ s: start + s, crossing: null })), next);
	}
	return all.length > mostInRow ? null : all;
}
