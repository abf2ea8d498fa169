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

/** The entry to mark, once an answer has been read. */
export function entryOf(reading: Reading): Entry | null {
	if (reading.state !== 'read') return null;
	const { value, grain, times } = reading;
	return { value, grain, ...(times !== undefined && { times }) };
}
