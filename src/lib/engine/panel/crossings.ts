import { leastPitch } from '../trade/pitches.ts';
import type { PanelJob } from './job.ts';
import { edgesFor, headSort } from './rivets.ts';
import type { Row } from './rows.ts';
import { clearOf, pointOn, slack } from './shape.ts';

/** Half a division of a scale: a drilled hole this near to a line is on it. */
const onLine = 1 / 128;

/** Two rows that share a hole where they cross. */
export interface Crossing {
	readonly across: Row;
	readonly along: Row;
	readonly x: number;
	readonly y: number;
}

/** A drilled member without a hole where another row crosses it. */
export interface Barred {
	readonly row: Row;
	readonly by: Row;
}

export interface Met {
	readonly crossings: readonly Crossing[];
	readonly barred: readonly Barred[];
}

/** Where rows cross, and whether one hole can serve both. */
export function crossingsOf(job: PanelJob, rows: readonly Row[]): Met {
	const crossings: Crossing[] = [];
	const barred: Barred[] = [];
	for (const across of rows.filter(({ runs }) => runs === 'across')) {
		for (const along of rows.filter(({ runs }) => runs === 'along')) {
			if (isCrowded(job, across, along) || isCrowded(job, along, across)) continue;
			const point = meeting(job, across, along);
			if (point === null) continue;
			if (typeof point === 'string') {
				const [row, by] = point === 'across' ? [along, across] : [across, along];
				if (!row.member.drilled && row.lead === null) barred.push({ row, by });
			} else {
				crossings.push({ across, along, ...point });
			}
		}
	}
	return { crossings, barred };
}

/** Whether a row would have holes too near together on both lines of a member of two rows. */
function isCrowded(job: PanelJob, row: Row, { lead, at }: Row): boolean {
	if (lead === null) return false;
	return Math.abs(at - lead.at) < leastPitch(headSort(job), row.rows, row.D) - slack;
}

/**
 * The shared hole; `across` or `along` where that row is drilled and has no hole there; null where
 * the rows do not cross with room at their ends and to the openings.
 */
function meeting(
	job: PanelJob,
	across: Row,
	along: Row
): { readonly x: number; readonly y: number } | 'across' | 'along' | null {
	const { least } = edgesFor(Math.max(across.D, along.D), headSort(job));
	const fits = (row: Row, s: number) =>
		s >= row.from + least - slack && s <= row.to - least + slack;
	if (!fits(across, along.at) || !fits(along, across.at)) return null;
	const plain = { x: across.at, y: along.at };
	if (job.cutouts.some((one) => clearOf(one, plain) < least - slack)) return null;
	const up = drilledNear(across, along.at);
	const right = drilledNear(along, across.at);
	if (up === null) return 'across';
	if (right === null) return 'along';
	return { x: right ?? across.at, y: up ?? along.at };
}

/** The drilled hole at a place; null where there is none, undefined where the row is not drilled. */
function drilledNear({ member }: Row, s: number): number | null | undefined {
	if (!member.drilled) return undefined;
	return member.drilled.find((one) => Math.abs(one - s) <= onLine) ?? null;
}

/** Where a crossing stands along one of its rows. */
export function along({ across, x, y }: Crossing, row: Row): number {
	return row === across ? y : x;
}

/** Whether a place of a row keeps its distance to every opening. */
export function isClear({ cutouts }: PanelJob, row: Row, s: number, least: number): boolean {
	const point = pointOn(row.runs, s, row.at);
	return cutouts.every((one) => clearOf(one, point) >= least - slack);
}
