import { unopened } from './opened.ts';
import { plainText } from './plain-text.ts';
import type { Reading } from './reading.ts';
import { unread } from './wanted.ts';

/** What an entry means, or the sentence that says what to write. */
export type Meant = { readonly words: string } | string;

/** Words as typed, with single spaces. */
export function readWords(
	typed: string,
	example: string,
	meant: (words: string) => Meant
): Reading<string> {
	return unopened(typed, example) ?? wordsRead(meant(typed.trim().replace(/\s+/g, ' ')));
}

/** Several words or names in one field, separated by semicolons, commas or lines. */
export function readWordList(
	typed: string,
	example: string,
	meant: (words: string) => Meant
): Reading<readonly string[]> {
	const one = (text: string) => readWords(text, example, meant);
	return unopened(typed, example) ?? together(typed.split(/[;,\n]/).map(one));
}

function wordsRead(meant: Meant): Reading<string> {
	return typeof meant === 'string'
		? unread(meant)
		: { state: 'read', value: meant.words, said: meant.words, grain: 0 };
}

/** The readings of the words in a list as one; empty ones between two commas are passed over. */
function together(readings: readonly Reading<string>[]): Reading<readonly string[]> {
	const fault = readings.find(({ state }) => state === 'unread');
	if (fault?.state === 'unread') return fault;
	const value = readings.flatMap((one) => (one.state === 'read' ? [one.value] : []));
	return { state: 'read', value, said: value.join(', '), grain: 0 };
}

/**
 * The only one of these words that begins as typed, or is it, or is said in a few more: `replace it`,
 * `drive it more`, `accepted`; null when there is none or more.
 */
export function begunBy(typed: string, words: readonly string[]): string | null {
	const start = plainText(typed);
	const whole = words.find((word) => word.toLowerCase() === start);
	if (whole !== undefined) return whole;
	const begun = words.filter((word) => word.toLowerCase().startsWith(start));
	if (begun.length > 0) return only(begun);
	// Who says what not to do does not say what to do.
	if (/\b(?:no|not|never|or)\b|n['’]t\b/.test(start)) return null;
	return only(words.filter((word) => saidIn(start, word.toLowerCase())));
}

function only(words: readonly string[]): string | null {
	return words.length === 1 ? (words[0] ?? null) : null;
}

/** Whether all parts of a word begin words of what was typed, in their order. */
function saidIn(typed: string, word: string): boolean {
	let from = 0;
	const parts = typed.split(/[^a-z0-9/.]+/);
	return word.split(' ').every((part) => {
		const at = parts.findIndex((one, i) => i >= from && one.startsWith(part));
		from = at + 1;
		return at >= 0;
	});
}
