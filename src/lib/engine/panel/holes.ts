import type { Crossing } from './crossings.ts';
import type { PanelJob, Problem } from './job.ts';
import { type Rivet, Rivets } from './rivets.ts';
import type { Row } from './rows.ts';
import { flangeOf, inside, pointOn, slack } from './shape.ts';
import { mostInRow, type Stretch } from './stations.ts';

/** A hole of the plan; places are not rounded yet. */
export interface Hole {
	/** Letter of its row and number along it: `A9`. */
	readonly id: string;
	readonly x: number;
	readonly y: number;
	/** Its row, and the one it shares the hole with. */
	readonly rows: readonly Row[];
	/** Thickness of every layer, from the manufactured head on. */
	readonly layers: readonly number[];
	/** Their names. */
	readonly parts: readonly string[];
	readonly rivet: Rivet;
}

/** A row with its holes, in stretches without an opening between. */
export interface FilledRow {
	readonly row: Row;
	readonly stretches: readonly (readonly Hole[])[];
}

export interface Filled {
	readonly holes: readonly Hole[];
	readonly rows: readonly FilledRow[];
}

/** A plan holds no more holes. */
export const mostHoles = 2000;

/** Numbers the holes row by row; one on a crossing keeps the number of its first row. */
export function fill(
	job: PanelJob,
	stations: ReadonlyMap<Row, readonly Stretch[] | null>,
	problems: Problem[]
): Filled {
	const rivets = new Rivets(job.rivet);
	const shared = new Map<Crossing, Hole>();
	const holes: Hole[] = [];
	const rows: FilledRow[] = [];
	const tooLong: string[] = [];
	const left: string[] = [];
	for (const [row, stretches] of stations) {
		if (stretches === null) {
			tooLong.push(row.name);
			continue;
		}
		const many = stretches.reduce((sum, one) => sum + one.length, 0);
		if (holes.length + many > mostHoles) {
			left.push(row.name);
			continue;
		}
		let number = 0;
		const made = stretches.map((stretch) =>
			stretch.map(({ s, crossing }) => {
				number += 1;
				const known = crossing && shared.get(crossing);
				if (known) return known;
				const hole = holeAt(job, row, s, crossing, `${row.id}${number}`, rivets);
				if (crossing) shared.set(crossing, hole);
				holes.push(hole);
				return hole;
			})
		);
		rows.push({ row, stretches: made });
	}
	problems.push(
		...leftOut(`A row holds ${mostInRow} holes`, tooLong),
		...leftOut(`A plan holds ${mostHoles} holes`, left)
	);
	return { holes, rows };
}

/** Rows that a sentence names before it counts the rest. */
const mostNamed = 3;

function leftOut(limit: string, rows: readonly string[]): Problem[] {
	if (rows.length === 0) return [];
	const are = rows.length > 1 ? 'are' : 'is';
	const named = rows.slice(0, mostNamed);
	const others = rows.length - named.length;
	const names = others > 0 ? `${named.join(', ')} and ${others} more` : rows.join(', ');
	return [
		{
			field: 'greatestPitch',
			says: `${limit}; ${names} would go over that and ${are} left out: make the greatest pitch larger.`
		}
	];
}

function holeAt(
	job: PanelJob,
	row: Row,
	s: number,
	crossing: Crossing | null,
	id: string,
	rivets: Rivets
): Hole {
	const rows = crossing ? [row, crossing.across === row ? crossing.along : crossing.across] : [row];
	const point = crossing ?? pointOn(row.runs, s, row.at);
	const under = [
		...job.doublers.filter((one) => inside(one, point) > -slack),
		...job.members.filter((one) => inside(flangeOf(one), point) > -slack)
	];
	const layers = [job.thickness ?? 0, ...under.map(({ thickness }) => thickness)];
	const D = Math.max(...rows.map((one) => one.D));
	const parts = [job.name, ...under.map(({ name }) => name)];
	return { id, x: point.x, y: point.y, rows, layers, parts, rivet: rivets.for(layers, D) };
}
