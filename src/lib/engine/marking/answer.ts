import type { LengthUnit } from '../quantity/kind.ts';
import { type Expected, read, type Reading } from '../quantity/read.ts';
import { readArithmetic } from '../quantity/arithmetic.ts';
import { normalPartNumber } from '../quantity/part-number.ts';
import { compiledOf } from '../solver/compiled.ts';
import type { Method } from '../solver/method.ts';
import { styleAt } from '../solver/show.ts';
import type { Entry } from './verdict.ts';

/** What an answer to a step must be, for reading it; `units` is what a bare length is in. */
export function expectedAt(method: Method, key: string, units: LengthUnit): Expected {
	const step = compiledOf(method).steps[key];
	if (!step) throw new Error(`unknown step: ${method.id}.${key}`);
	const inFigures = method.steps[key]?.inFigures ?? false;
	return { kind: step.kind, list: step.list, style: styleAt(method, key), unit: units, inFigures };
}

/** Reads an answer to a step as typed. Plain arithmetic is left to `workArithmetic`. */
export function readAnswer(method: Method, key: string, text: string, units: LengthUnit): Reading {
	const expected = expectedAt(method, key, units);
	const choices = method.steps[key]?.oneOf ?? [];
	if (choices.length > 0) return readChoice(text, choices);
	const reading = read(text, expected);
	if (expected.kind !== 'text' || reading.state !== 'read') return reading;
	const number = normalPartNumber(text);
	return number === null ? reading : { ...reading, value: number, said: number };
}

export function workArithmetic(
	method: Method,
	key: string,
	text: string,
	units: LengthUnit
): Promise<Reading> {
	return readArithmetic(text, expectedAt(method, key, units));
}

/** A choice may be typed in full or by its first letters, as long as only one begins so. */
function readChoice(text: string, choices: readonly string[]): Reading {
	const typed = text.trim().toLowerCase();
	if (typed === '') return { state: 'empty' };
	const exact = choices.find((choice) => choice.toLowerCase() === typed);
	if (exact !== undefined) return { state: 'read', value: exact, said: exact, grain: 0 };
	const begun = choices.filter((choice) => choice.toLowerCase().startsWith(typed));
	const [only] = begun;
	if (only === undefined || begun.length > 1) {
		return { state: 'unread', why: `Answer with one of: ${choices.join(', ')}.` };
	}
	return { state: 'read', value: only, said: only, grain: 0 };
}

/** The entry to mark, once an answer has been read. */
export function entryOf(reading: Reading): Entry | null {
	return reading.state === 'read' ? { value: reading.value, grain: reading.grain } : null;
}
