import { angle, count, fraction } from '../quantity/kinds.ts';
import type { Field, Fields, Reads } from './fields.ts';
import type { Problem } from './job.ts';

interface Types extends Record<Reads, unknown> {
	length: number;
	angle: number;
	count: number;
	text: string;
	choice: string;
	lengths: readonly number[];
}

/** What was read of an object, by field; null where it is left out or could not be read. */
export type Got<F extends Fields> = { readonly [K in keyof F]: Types[F[K]['reads']] | null };

/** Where sentences go: the path of an object, and what it is called in them. */
export interface Place {
	readonly path: string;
	readonly name: string;
	readonly problems: Problem[];
}

/** Longest list of positions. */
const mostPositions = 500;

const sized = { length: fraction, lengths: fraction, angle, count } as const;

/** Reads an object field by field; what cannot be read is told and left out. */
export function readFields<F extends Fields>(fields: F, raw: unknown, place: Place): Got<F> {
	const given = isObject(raw) ? raw : {};
	if (raw !== undefined && !isObject(raw)) tell(place, '', 'write it in braces, { … }.');
	for (const key of Object.keys(given)) {
		if (Object.hasOwn(fields, key)) continue;
		const known = Object.keys(fields).join(', ');
		tell(place, '', `there is no field “${clipped(key)}”, so it is left out; it takes ${known}.`);
	}
	const got = Object.entries(fields).map(([key, field]) => {
		const value = Object.hasOwn(given, key) ? given[key] : undefined;
		const shown = value === undefined || value === '' ? field.usual : value;
		return [key, readField(field, shown, fieldOf(place, key))];
	});
	return Object.fromEntries(got) as Got<F>;
}

export function isObject(raw: unknown): raw is Record<string, unknown> {
	return typeof raw === 'object' && raw !== null && !Array.isArray(raw);
}

export function joined(path: string, key: string | number): string {
	return path === '' ? String(key) : `${path}.${key}`;
}

function readField(field: Field, raw: unknown, place: Place): unknown {
	if (raw === undefined || raw === null || raw === '') {
		if (field.needed) tell(place, field.label, 'it is missing; write one.');
		return null;
	}
	switch (field.reads) {
		case 'text':
			return readText(field, raw, place);
		case 'choice':
			return readChoice(field, raw, place);
		case 'lengths':
			return readLengths(field, raw, place);
		default:
			return readSize(field, field.reads, raw, place);
	}
}

function readText({ label }: Field, raw: unknown, place: Place): string | null {
	if (typeof raw === 'string' && raw.length <= 60) return clipped(raw).trim() || null;
	return tell(place, label, 'write it as text of 60 letters at most.');
}

function readChoice({ label, choices = [] }: Field, raw: unknown, place: Place): string | null {
	const text = String(typeof raw === 'number' ? raw : raw)
		.trim()
		.toLowerCase();
	const found = choices.find((one) => one === text);
	return found ?? tell(place, label, `it is one of ${choices.join(', ')}; choose one.`);
}

/** One number in base units. A bare length is in inches. */
function readSize(
	{ label, zero }: Field,
	reads: 'length' | 'angle' | 'count',
	raw: unknown,
	place: Place
): number | null {
	if (typeof raw !== 'string' && typeof raw !== 'number') {
		return tell(place, label, 'write one value, like "3/4in".');
	}
	const reading = sized[reads].read(String(raw));
	if (reading.state === 'which') return tell(place, label, reading.question);
	if (reading.state === 'unread') return tell(place, label, reading.why);
	if (reading.state !== 'read' || reading.times) {
		return tell(place, label, 'write the size itself, worked out.');
	}
	const value = Number(reading.value);
	if (value > 0 || (zero && value === 0)) return value;
	return tell(place, label, `it must be ${zero ? 'zero or more' : 'more than zero'}.`);
}

function readLengths(field: Field, raw: unknown, place: Place): readonly number[] | null {
	const { label } = field;
	const all = typeof raw === 'string' ? raw.split(/[;,\n]/).filter((one) => one.trim()) : raw;
	if (!Array.isArray(all)) return tell(place, label, 'write a list, like ["1in", "2in"].');
	if (all.length > mostPositions) {
		return tell(place, label, `a list holds ${mostPositions} at most.`);
	}
	const units = new Set(all.map(unitIn));
	if (units.size > 1) {
		return tell(
			place,
			label,
			`${[...units].join(' and ')} stand in one list; write all in the same unit.`
		);
	}
	const before = place.problems.length;
	const read = all.map((one: unknown) => readSize({ ...field, zero: true }, 'length', one, place));
	if (place.problems.length > before) place.problems.splice(before + 1);
	return read.every((one) => one !== null) ? read.sort((a, b) => a - b) : null;
}

/** The unit an entry is written in; a bare number has none. */
function unitIn(raw: unknown): string {
	const [, unit = ''] = /([a-z"']+)\s*$/i.exec(String(raw)) ?? [];
	return unit === '' ? 'bare numbers' : unit.toLowerCase().replace(/^inch(es)?$|^"$/, 'in');
}

/** The place of one field of an object. */
export function fieldOf(place: Place, key: string): Place {
	return { ...place, path: joined(place.path, key) };
}

/** Adds a sentence about a field; null, for what could not be read. */
export function tell({ path, name, problems }: Place, label: string, says: string): null {
	problems.push({ field: path, says: `${label ? `${name}, ${label}` : name}: ${says}` });
	return null;
}

function clipped(text: string): string {
	return text.replace(/[\p{Cc}\p{Cf}]/gu, '').slice(0, 60);
}
