import { lapWidth } from '../methods/lap-width.ts';
import { evaluate } from '../solver/evaluate.ts';
import { TradeError } from '../solver/trade-function.ts';
import type { Area, Member, PanelJob, Problem, Runs } from './job.ts';
import { diameterFor, edgesFor, headSort, numberAt } from './rivets.ts';
import { flangeOf, slack } from './shape.ts';
import { inchesText } from './write.ts';

/** A line of holes on a member. */
export interface Row {
	/** Letter its holes are numbered with. */
	readonly id: string;
	readonly name: string;
	readonly member: Member;
	readonly runs: Runs;
	/** Place of the line across its run. */
	readonly at: number;
	/** The row whose holes this one's stand midway between; null where it is the first. */
	readonly lead: Row | null;
	/** Rows of the member that are laid out. */
	readonly rows: 1 | 2;
	/** Rivet diameter, inches: the largest that a stack along the line wants. */
	readonly D: number;
	/** From the end of the row to its first hole. */
	readonly margin: number;
	/** Begin and end of the run that holes may stand in, before margins. */
	readonly from: number;
	readonly to: number;
}

/** Letters that cannot be taken for figures. */
const letters = 'ABCDEFGHJKLMNPRSTUVWXYZ';

/** The rows of every member that can be riveted; nothing where the sheet has no thickness. */
export function rowsOf(job: PanelJob, flat: Area, problems: Problem[]): Row[] {
	if (job.thickness === null) return [];
	const rows: Row[] = [];
	const skin = job.thickness;
	for (const member of job.members) {
		try {
			const D = diameterAlong(job, member, skin, problems);
			rows.push(...laidOut(job, member, D, flat, problems, rows.length));
		} catch (error) {
			if (!(error instanceof TradeError)) throw error;
			problems.push({
				field: `${member.field}.thickness`,
				says: `${member.name}: ${error.message}.`
			});
		}
	}
	return rows;
}

/** The largest diameter that any stack along the member wants, or the one that was given. */
function diameterAlong(
	{ members, doublers, rivet }: PanelJob,
	member: Member,
	skin: number,
	problems: Problem[]
): number {
	const own = flangeOf(member);
	const over = [
		...doublers.filter((one) => overlap(own, one)),
		...members.filter((one) => one !== member && overlap(own, flangeOf(one)))
	];
	const wanted = diameterFor([skin, member.thickness, ...over.map(({ thickness }) => thickness)]);
	if (rivet.diameter === null) return wanted;
	if (rivet.diameter < wanted - slack) {
		problems.push({
			field: 'rivet.diameter',
			says: `${member.name}: rivets of ${inchesText(rivet.diameter)} are smaller than its stack wants, ${inchesText(wanted)}; keep to approved data or leave the diameter out.`
		});
	}
	return rivet.diameter;
}

function overlap(one: Area, other: Area): boolean {
	return (
		one.x < other.x + other.length - slack &&
		other.x < one.x + one.length - slack &&
		one.y < other.y + other.width - slack &&
		other.y < one.y + one.width - slack
	);
}

function laidOut(
	job: PanelJob,
	member: Member,
	D: number,
	flat: Area,
	problems: Problem[],
	before: number
): Row[] {
	const head = headSort(job);
	const margin = job.endMargin ?? edgesFor(D, head).preferred;
	const { runs } = member;
	const [low, high] =
		runs === 'across' ? [flat.y, flat.y + flat.width] : [flat.x, flat.x + flat.length];
	const ends = { from: Math.max(member.from, low), to: Math.min(member.to, high) };
	const apart = member.rows === 2 ? apartFor(job, member, D, problems) : null;
	const shared = { member, runs, D, margin, rows: apart === null ? 1 : 2, ...ends } as const;
	const first = { ...shared, id: letterOf(before), name: member.name, lead: null };
	if (apart === null) return [{ ...first, at: member.at }];
	// The row with the end holes stands towards the nearer edge of the panel.
	const reach = runs === 'across' ? job.length : job.width;
	const outward = member.at > reach / 2 + slack ? 1 : -1;
	const lead: Row = { ...first, at: member.at + (outward * apart) / 2 };
	const second: Row = {
		...shared,
		id: letterOf(before + 1),
		name: `${member.name}, row 2`,
		lead,
		at: member.at - (outward * apart) / 2
	};
	return [lead, second];
}

/** How far two rows stand apart on a flange; null where it is too narrow for both. */
function apartFor(
	job: PanelJob,
	{ name, flange, field }: Member,
	D: number,
	problems: Problem[]
): number | null {
	const given = { D, head: headSort(job), rows: 2, pitch: job.greatestPitch ?? 4 * D };
	const values = evaluate(lapWidth, given);
	const [rowsApart, closest] = [numberAt(values, 'rowsApart'), numberAt(values, 'closest')];
	const room = flange - 2 * numberAt(values, 'edge');
	if (room >= rowsApart - slack) return rowsApart;
	if (room >= closest - slack) return room;
	problems.push({
		field: `${field}.flange`,
		says: `${name}, flange width: ${inchesText(flange)} is too narrow for two rows, which take ${inchesText(closest + flange - room)}; one row is laid out.`
	});
	return null;
}

/** A, B, … Z, AA, AB, … without I, O and Q. */
export function letterOf(place: number): string {
	const last = letters[place % letters.length] ?? '';
	return place < letters.length ? last : letterOf(Math.floor(place / letters.length) - 1) + last;
}
