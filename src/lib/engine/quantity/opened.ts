import { hasHidden, plainText } from './plain-text.ts';
import type { Reading } from './reading.ts';
import { unread } from './wanted.ts';

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
