import type { LengthUnit } from '../quantity/value.ts';
import type { Entry } from '../quantity/kinds/kind.ts';
import type { Reading } from '../quantity/read.ts';
import { kindAt } from '../solver/kind-at.ts';
import type { Method } from '../solver/method.ts';

/**
 * Reads an answer to a step as typed; `units` is what a bare length is in. Arithmetic, and any
 * text before the reader is there, is left to `workArithmetic`.
 */
export function readAnswer(method: Method, key: string, text: string, units: LengthUnit): Reading {
	return kindAt(method, key).read(text, units);
}

export function workArithmetic(
	method: Method,
	key: string,
	text: string,
	units: LengthUnit
): Promise<Reading> {
	return kindAt(method, key).work(text, units);
}

/** The same with arithmetic worked out at once; never rejects. */
export async function readWorked(
	method: Method,
	key: string,
	text: string,
	units: LengthUnit
): Promise<Reading> {
	const reading = readAnswer(method, key, text, units);
	return reading.state === 'arithmetic' ? workArithmetic(method, key, text, units) : reading;
}

/** The entry to mark, once an answer has been read. */
export function entryOf(reading: Reading): Entry | null {
	if (reading.state !== 'read') return null;
	const { value, grain, times } = reading;
	return { value, grain, ...(times !== undefined && { times }) };
}

/** An answer as it was understood, as the shop writes it. */
export function entryText(method: Method, key: string, entry: Entry, units: LengthUnit): string {
	const kind = kindAt(method, key);
	if (entry.times !== undefined) return `${Number(entry.value)} ${entry.times}`;
	const value = kind.toValue(entry);
	return value === null ? '' : kind.write(value, units);
}

/** Whether two readings of a step come to the same. */
export function isSameEntry(method: Method, key: string, one: Entry, other: Entry): boolean {
	const kind = kindAt(method, key);
	const [first, second] = [kind.toValue(one), kind.toValue(other)];
	if (first === null || second === null) return first === second;
	return one.grain === other.grain && one.times === other.times && !kind.differs(first, second, 0);
}
