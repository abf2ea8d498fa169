import { listReading } from './list.ts';
import { hasHidden, plainText } from './plain-text.ts';
import { oneReading } from './read-one.ts';
import type { Expected, Reading } from './reading.ts';
import { refuse, unread } from './wanted.ts';

export type { Expected, Option, Reading } from './reading.ts';

/** Longer entries are not looked at. */
export const longestEntry = 200;

/**
 * What a person typed, as a value in base units; or the question to ask, the sentence to show, or
 * the arithmetic to hand to `readArithmetic`. Never throws, whatever the text.
 */
export function read(text: string, expected: Expected): Reading {
	if (text.length > longestEntry) {
		return unread(refuse(`That is over ${longestEntry} characters.`, expected));
	}
	if (hasHidden(text)) {
		return unread('The entry holds characters that cannot be seen. Clear it and type it again.');
	}
	const entry = plainText(text);
	if (entry === '') return { state: 'empty' };
	if (expected.kind === 'text') return words(text);
	return expected.list ? listReading(entry, expected) : oneReading(entry, expected);
}

function words(text: string): Reading {
	const value = text.trim().replace(/\s+/g, ' ');
	return { state: 'read', value, said: value, grain: 0 };
}
