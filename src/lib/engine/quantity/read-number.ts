import type { Exact } from './exact.ts';
import { listReading } from './list.ts';
import { unopened } from './opened.ts';
import { plainText } from './plain-text.ts';
import { oneReading } from './read-one.ts';
import type { Field, Reading } from './reading.ts';

/**
 * What a person typed, as a number in base units; or the question to ask, the sentence to show, or
 * the arithmetic to hand to `readArithmetic`. Never throws, whatever the text.
 */
export function readNumber(text: string, field: Field): Reading<Exact> {
	const entry = plainText(text);
	return unopened(text, field.kind.example(field.unit)) ?? oneReading(entry, field);
}

/** The same for several numbers in one field. */
export function readNumbers(text: string, field: Field): Reading<readonly Exact[]> {
	const entry = plainText(text);
	return unopened(text, field.kind.example(field.unit)) ?? listReading(entry, field);
}
