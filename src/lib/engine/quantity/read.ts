import type { Exact } from './exact.ts';
import { listReading } from './list.ts';
import { hasHidden, plainText } from './plain-text.ts';
import { oneReading } from './read-one.ts';
import type { Field, Reading } from './reading.ts';
import { unread } from './wanted.ts';

export type { Field, Option, Reading } from './reading.ts';

/** Longer entries are not looked at. */
export const longestEntry = 200;

/** The reading of text that is not looked at: empty, over-long, or with hidden characters. */
export function unopened(text: string, example: string): Reading<never> | null {
	if (text.length > longestEntry) {
		return unread(`That is over ${longestEntry} characters. Write it like ${example}.`);
	}
	if (hasHidden(text)) {
		return unread('The entry holds characters that cannot be seen. Clear it and type it again.');
	}
	return plainText(text) === '' ? { state: 'empty' } : null;
}

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
