import { capital } from '../quantity/capital.ts';
import { inchesText } from './write.ts';
import { stockSheets } from '../trade/stock.ts';
import {
	bendFields,
	lists,
	panelFields,
	panelVersion,
	planFields,
	planPart,
	rivetFields
} from './fields.ts';
import type { Bend, Cutout, Doubler, Edge, Member, PanelJob, Problem, StockSheet } from './job.ts';
import { type Got, isObject, joined, type Place, fieldOf, readFields, tell } from './read-field.ts';

/** A panel that cannot be worked at all; the message is one sentence that says what to do. */
export class PanelError extends Error {
	/** The same by field, and what else was found. */
	readonly problems: readonly Problem[];

	constructor(message: string, problems: readonly Problem[] = []) {
		super(message);
		this.problems = problems;
	}
}

export interface PanelReading {
	readonly job: PanelJob;
	readonly problems: readonly Problem[];
}

const parts = ['panel', 'rivet', 'version', ...Object.keys(lists), ...Object.keys(planFields)];

/**
 * Reads a panel file, whatever it holds. Each part that cannot be used is told by a sentence and
 * left out.
 *
 * @throws PanelError where the panel itself has no size
 */
export function readPanel(raw: unknown): PanelReading {
	if (!isObject(raw)) throw new PanelError('A panel file is an object: { "panel": { … }, … }.');
	const problems: Problem[] = [];
	const whole = { path: '', name: 'The file', problems };
	for (const key of Object.keys(raw)) {
		if (parts.includes(key)) continue;
		tell(whole, '', `there is no part “${key.slice(0, 40)}”, so it is left out.`);
	}
	if (raw.version !== undefined && raw.version !== panelVersion) {
		tell({ ...whole, path: 'version' }, 'version', `this program reads version ${panelVersion}.`);
	}
	const panel = readFields(panelFields, raw.panel, { path: 'panel', name: 'Panel', problems });
	const { length, width } = panel;
	if (length === null || width === null) {
		const why = problems.find(({ field }) => /^panel(\.(length|width))?$/.test(field));
		throw new PanelError(why?.says ?? 'Panel: give its length and width.', problems);
	}
	const size = { length, width };
	const rivet = readFields(rivetFields, raw.rivet, { path: 'rivet', name: 'Rivet', problems });
	const { greatestPitch, endMargin, kerf } = readFields(planFields, planPart(raw), {
		path: '',
		name: 'Rows',
		problems
	});
	const all = <T>(key: keyof typeof lists, read: (one: unknown, place: Place) => T | null) =>
		readList(raw[key], key, read, problems);
	const job: PanelJob = {
		...size,
		name: panel.name ?? 'Panel',
		thickness: panel.thickness,
		alloy: panel.alloy ?? '2024-T3',
		cornerRadius: cornerOf(panel.cornerRadius ?? 0, size, problems),
		trim: panel.trim ?? 0,
		members: all('members', (one, place) => readMember(one, place, size)),
		doublers: all('doublers', (one, place) => readDoubler(one, place, size)),
		cutouts: all('cutouts', (one, place) => readCutout(one, place, size)),
		bends: oneAnEdge(all('bends', readBend), problems),
		rivet: {
			head: rivet.head === 'countersunk' ? 'countersunk' : 'universal',
			alloy: rivet.alloy ?? '2117',
			diameter: rivet.diameter
		},
		greatestPitch,
		endMargin,
		stock: raw.stock === undefined ? stockSheets : all('stock', readStock),
		kerf: kerf ?? 0
	};
	return { job, problems };
}

function cornerOf(radius: number, { length, width }: Size, problems: Problem[]): number {
	const most = Math.min(length, width) / 2;
	if (radius <= most) return radius;
	const says = `Panel, corner radius: ${inchesText(radius)} is more than half the panel; ${inchesText(most)} is used.`;
	problems.push({ field: 'panel.cornerRadius', says });
	return most;
}

function readList<T>(
	raw: unknown,
	key: keyof typeof lists,
	read: (one: unknown, place: Place) => T | null,
	problems: Problem[]
): T[] {
	if (raw === undefined) return [];
	const { one: noun, most } = lists[key];
	const whole = { path: key, name: `List of ${noun}s`, problems };
	if (!Array.isArray(raw)) {
		tell(whole, '', 'write a list, [ … ].');
		return [];
	}
	if (raw.length > most) tell(whole, '', `it holds ${most} at most; the rest are left out.`);
	return raw.slice(0, most).flatMap((one: unknown, i) => {
		const own = isObject(one) && typeof one.name === 'string' ? one.name.trim() : '';
		const name = own.slice(0, 60) || capital(`${noun} ${i + 1}`);
		const got = read(one, { path: joined(key, i), name, problems });
		return got === null ? [] : [got];
	});
}

type Size = Pick<PanelJob, 'length' | 'width'>;

function readMember(raw: unknown, place: Place, panel: Size): Member | null {
	const got = readFields(lists.members.fields, raw, place);
	const { at, flange, thickness } = got;
	const runs = got.runs === 'along' ? 'along' : 'across';
	const [span, reach] =
		runs === 'along' ? [panel.length, panel.width] : [panel.width, panel.length];
	const unreadHoles = isObject(raw) && raw.drilled !== undefined && got.drilled === null;
	if (at === null || flange === null || thickness === null || got.runs === null || unreadHoles) {
		return null;
	}
	if (at > reach) {
		return tell(
			fieldOf(place, 'at'),
			'place',
			`${inchesText(at)} is outside the panel, which is ${inchesText(reach)} that way; correct it.`
		);
	}
	const [from, to] = [got.from ?? 0, got.to ?? span];
	if (to > span || from >= to) {
		return tell(
			fieldOf(place, 'to'),
			'beginning and end',
			`they must lie in order between 0 and ${inchesText(span)}.`
		);
	}
	if (got.rows !== 1 && got.rows !== 2) {
		tell(fieldOf(place, 'rows'), 'rows', 'it has 1 or 2; one is laid out.');
	}
	const rows = got.rows === 2 ? 2 : 1;
	if (rows === 2 && got.drilled) {
		tell(
			fieldOf(place, 'drilled'),
			'drilled holes',
			'a drilled member has one row; lay its rows out as two members.'
		);
		return null;
	}
	const drilled = holesWithin(got.drilled, [from, to], place);
	const shared = { name: place.name, field: place.path };
	return { ...shared, runs, at, flange, thickness, rows, from, to, drilled };
}

/** The holes that lie on the member; the others are told. */
function holesWithin(
	drilled: readonly number[] | null,
	[from, to]: readonly [number, number],
	place: Place
): readonly number[] | null {
	const outside = drilled?.find((hole) => hole < from || hole > to);
	if (drilled === null || outside === undefined) return drilled;
	tell(
		fieldOf(place, 'drilled'),
		'drilled holes',
		`${inchesText(outside)} is off the member, which lies between ${inchesText(from)} and ${inchesText(to)}; correct it.`
	);
	return drilled.filter((hole) => hole >= from && hole <= to);
}

function readDoubler(raw: unknown, place: Place, panel: Size): Doubler | null {
	const { x, y, length, width, thickness } = readFields(lists.doublers.fields, raw, place);
	if (x === null || y === null || length === null || width === null || thickness === null) {
		return null;
	}
	tellOver({ x: x + length, y: y + width }, panel, place);
	return { name: place.name, x, y, length, width, thickness, field: place.path };
}

/** Tells of a part whose right or upper end lies past the panel; it is worked with all the same. */
function tellOver(end: { readonly x: number; readonly y: number }, panel: Size, place: Place) {
	const slack = 1e-9;
	const past = end.x > panel.length + slack ? 'x' : 'y';
	if (past === 'y' && end.y <= panel.width + slack) return;
	tell(
		fieldOf(place, past),
		'',
		'it reaches past the edge of the panel; correct its place or its size.'
	);
}

function readCutout(raw: unknown, place: Place, panel: Size): Cutout | null {
	const got = readFields(lists.cutouts.fields, raw, place);
	const { x, y, length, width, diameter } = got;
	if (x === null || y === null) return null;
	if (x > panel.length || y > panel.width) {
		const past = x > panel.length ? 'x' : 'y';
		return tell(fieldOf(place, past), 'place', 'it is outside the panel; correct it.');
	}
	if (diameter !== null) {
		const reach = diameter / 2;
		// A round one may reach past the left and the lower edge as well.
		const far = (at: number) => (at < reach ? Infinity : at + reach);
		tellOver({ x: far(x), y: far(y) }, panel, place);
		return { name: place.name, round: true, x, y, diameter };
	}
	if (length !== null && width !== null) {
		tellOver({ x: x + length, y: y + width }, panel, place);
		return { name: place.name, round: false, x, y, length, width };
	}
	return tell(fieldOf(place, 'diameter'), '', 'give its length and width, or its diameter.');
}

function readBend(raw: unknown, place: Place): Bend | null {
	const { edge, leg, angle, radius }: Got<typeof bendFields> = readFields(bendFields, raw, place);
	if (edge === null || leg === null || angle === null || radius === null) return null;
	if (angle <= 0 || angle >= 180) {
		return tell(
			fieldOf(place, 'angle'),
			'bend angle',
			'it counts from flat and lies between 0° and 180°; correct it.'
		);
	}
	return { edge: edge as Edge, leg, angle, radius, field: place.path };
}

function oneAnEdge(bends: readonly Bend[], problems: Problem[]): Bend[] {
	return bends.filter(({ edge }, i) => {
		if (bends.findIndex((one) => one.edge === edge) === i) return true;
		problems.push({ field: 'bends', says: `The ${edge} edge is bent twice; one bend is used.` });
		return false;
	});
}

function readStock(raw: unknown, place: Place): StockSheet | null {
	const { length, width } = readFields(lists.stock.fields, raw, place);
	return length === null || width === null ? null : { length, width };
}
