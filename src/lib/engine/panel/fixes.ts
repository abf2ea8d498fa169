import type { Check } from './checks.ts';
import type { Member } from './job.ts';
import { type PanelPlan, planPanel } from './plan.ts';
import { isObject } from './read-field.ts';
import { PanelError } from './read-panel.ts';
import type { Row } from './rows.ts';
import { slack } from './shape.ts';
import { inchesText } from './write.ts';

/** One change of a panel file after which a limit holds. */
export interface Fix {
	/** Path in the panel file: `members.0.at`, `endMargin`. */
	readonly field: string;
	/** What is to stand there. */
	readonly text: string;
	/** What it does, as an order: `Set Frame A 1/8 in to the right`. */
	readonly says: string;
	/** What the limit is then held against, inches. */
	readonly value: number;
}

/** A change to try. */
interface Try {
	readonly field: string;
	readonly text: string;
	readonly says: string;
}

const sixteenth = 1 / 16;
/** Sixteenths that a place, a margin, a flange and a pitch are changed by at most. */
const most = { place: 16, margin: 8, flange: 8, pitch: 8 } as const;

/**
 * Changes of one value that make a limit hold without breaking another: of each sort the smallest.
 * Every one is tried by planning the whole panel with it.
 *
 * @param raw the panel file
 * @param goOn asked before every try; false ends the search
 */
export async function fixesFor(
	raw: unknown,
	plan: PanelPlan,
	check: Check,
	goOn: () => Promise<boolean>
): Promise<Fix[]> {
	const found: Fix[] = [];
	for (const sort of triesFor(raw, plan, check)) {
		for (const one of sort) {
			if (!(await goOn())) return found;
			const value = await heldBy(withField(raw, one.field, one.text), plan, check);
			if (value === null) continue;
			found.push({ ...one, value });
			break;
		}
	}
	return found;
}

/** What the limit is held against in another file; null where it does not hold, or another breaks. */
async function heldBy(raw: unknown, before: PanelPlan, check: Check): Promise<number | null> {
	const after = await planned(raw);
	if (!after || after.problems.length > before.problems.length) return null;
	if (failing(after) > failing(before) || undecided(after) > undecided(before)) return null;
	const own = after.checks.find(
		({ row, what, least }) => row === check.row && what === check.what && least === check.least
	);
	// What is far from a limit is not listed.
	if (!own) return after.rows.some(({ row }) => row.name === check.row) ? check.limit * 2 : null;
	return own.verdict === 'holds' ? own.value : null;
}

async function planned(raw: unknown): Promise<PanelPlan | null> {
	try {
		return await planPanel(raw);
	} catch (error) {
		if (error instanceof PanelError) return null;
		throw error;
	}
}

const count = ({ checks }: PanelPlan, verdict: Check['verdict']) =>
	checks.filter((one) => one.verdict === verdict).length;
const failing = (plan: PanelPlan) => count(plan, 'fails');
const undecided = (plan: PanelPlan) => count(plan, 'undecided') + failing(plan);

function triesFor(raw: unknown, plan: PanelPlan, { row: name, what, least }: Check): Try[][] {
	const row = plan.rows.find((one) => one.row.name === name)?.row;
	if (!row) return [];
	const member = memberTries(raw, plan, row);
	if (what === 'pitch') return [pitchTries(plan, least ? [1] : [-1])];
	if (what === 'flange side') return [member.narrower, member.twoRows];
	if (what === 'member end') return [marginTries(row, -1), member.shorter];
	if (what === 'flange edge') return [member.longer, marginTries(row, 1), member.wider];
	return [marginTries(row, 1), member.moved, pitchTries(plan, [-1, 1])];
}

function marginTries({ margin }: Row, sign: 1 | -1): Try[] {
	return steps(most.margin).flatMap((by) => {
		const to = upToSixteenth(margin) + sign * by;
		if (to <= 0) return [];
		const text = inchesText(to);
		return [{ field: 'endMargin', text, says: `Begin the rows ${text} from their ends` }];
	});
}

function pitchTries({ job }: PanelPlan, signs: readonly (1 | -1)[]): Try[] {
	const { greatestPitch } = job;
	if (greatestPitch === null) return [];
	return steps(most.pitch).flatMap((by) =>
		signs.flatMap((sign) => {
			const to = upToSixteenth(greatestPitch) + sign * by;
			if (to <= sixteenth) return [];
			const text = inchesText(to);
			return [{ field: 'greatestPitch', text, says: `Space the rivets at most ${text} apart` }];
		})
	);
}

function memberTries(raw: unknown, { job }: PanelPlan, { member, runs }: Row) {
	const place = placeIn(raw, member);
	const at = (key: string, value: number, says: string): Try[] =>
		place === null ? [] : [{ field: `members.${place}.${key}`, text: inchesText(value), says }];
	const { name, flange } = member;
	const reach = runs === 'across' ? job.length : job.width;
	const span = runs === 'across' ? job.width : job.length;
	const words = runs === 'across' ? ['to the right', 'to the left'] : ['up', 'down'];
	const moved = steps(most.place).flatMap((by) =>
		inward(member.at, reach).flatMap((sign) => {
			const to = member.at + sign * by;
			if (to < 0 || to > reach) return [];
			return at('at', to, `Set ${name} ${inchesText(by)} ${words[sign > 0 ? 0 : 1] ?? ''}`);
		})
	);
	const flanges = (sign: 1 | -1) =>
		steps(most.flange).flatMap((by) => {
			const to = flange + sign * by;
			return to <= 0 ? [] : at('flange', to, `Give ${name} a flange of ${inchesText(to)}`);
		});
	const lengths = (sign: 1 | -1) =>
		steps(most.margin).flatMap((by) => {
			const [from, to] = [member.from - sign * by, member.to + sign * by];
			const says = `Let ${name} ${sign > 0 ? 'run' : 'end'} ${inchesText(by)} ${sign > 0 ? 'further' : 'sooner'}`;
			return [
				...(from >= 0 && (member.from > slack || sign < 0) ? at('from', from, says) : []),
				...(to <= span + slack && (member.to < span - slack || sign < 0) ? at('to', to, says) : [])
			];
		});
	const both: Try[] =
		place === null || member.rows === 2
			? []
			: [{ field: `members.${place}.rows`, text: '2', says: `Give ${name} two rows` }];
	return {
		moved,
		wider: flanges(1),
		narrower: flanges(-1),
		longer: lengths(1),
		shorter: lengths(-1),
		twoRows: both
	};
}

/** Towards the middle first. */
function inward(at: number, reach: number): (1 | -1)[] {
	return at <= reach / 2 ? [1, -1] : [-1, 1];
}

const steps = (many: number) => Array.from({ length: many }, (_, i) => (i + 1) * sixteenth);

function upToSixteenth(value: number): number {
	return Math.ceil(value / sixteenth - slack) * sixteenth;
}

/** Where a member stands in the file: what could not be read of it is not among those planned. */
function placeIn(raw: unknown, { name }: Member): number | null {
	const members = isObject(raw) && Array.isArray(raw.members) ? raw.members : [];
	const found = members.findIndex(
		(one: unknown, i) =>
			isObject(one) && (one.name === name || (one.name === undefined && name === `Member ${i + 1}`))
	);
	return found < 0 ? null : found;
}

/** The file with another text at a path; parts that are not there are left alone. */
function withField(raw: unknown, path: string, text: string): unknown {
	const [key = '', ...rest] = path.split('.');
	if (Array.isArray(raw)) {
		return raw.map((one: unknown, i) =>
			String(i) === key ? withField(one, rest.join('.'), text) : one
		);
	}
	if (!isObject(raw)) return raw;
	return { ...raw, [key]: rest.length === 0 ? text : withField(raw[key], rest.join('.'), text) };
}
