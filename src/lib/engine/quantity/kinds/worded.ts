import { plainText } from '../plain-text.ts';
import { unopened } from '../read.ts';
import type { Reading } from '../reading.ts';
import { dimension } from '../units.ts';
import { unread } from '../wanted.ts';
import type { Kind } from './kind.ts';
import type { Listable } from './list.ts';
import { noMistakes } from './mistakes.ts';
import { wordOptions } from './option-rules.ts';

/** Words: formulas look them up and put them together, and compute nothing with them. */
export const text = dimension({ name: 'text', noun: 'words', unit: '', formula: null, units: [] });

/** What is special about a kind of words. */
interface Parts {
	readonly id: string;
	readonly noun: string;
	readonly hint: string;
	readonly example: string;
	readonly choices?: readonly string[];
	readonly options?: Kind<string, string>['options'];
	/** The words meant, or a sentence that says what to write. */
	readonly meant: (typed: string) => { readonly words: string } | string;
}

/** Makes a kind of words. They are right when they are the very ones. */
export function worded({ example, meant, ...parts }: Parts): Listable<string, string> {
	const read = (typed: string): Reading<string> =>
		unopened(typed, example) ?? wordsRead(meant(typed.trim().replace(/\s+/g, ' ')));
	const kind: Listable<string, string> = {
		dimension: text,
		choices: [],
		isList: false,
		fine: 1,
		below: null,
		mistakes: noMistakes,
		options: wordOptions,
		...parts,
		get member() {
			return kind;
		},
		example: () => example,
		read,
		readAll: (typed) => unopened(typed, example) ?? together(typed.split(/[;,\n]/).map(read)),
		writeAll: (values) => values.join(', '),
		work: (typed) => Promise.resolve(read(typed)),
		judge: ({ value }, right) => (value === right ? { is: 'right' } : { is: 'off' }),
		isWritten: ({ value }, other) => value === other,
		differs: (one, other) => one !== other,
		valueOf: ({ value }) => value,
		isSound: () => true,
		numbers: () => [],
		map: (value) => value,
		scaled: (entry) => entry,
		members: (value) => [value],
		write: (value) => value,
		mathml: (value) => wordsMathml(value),
		nearest64: () => '',
		plain: (value) => value
	};
	return kind;
}

function wordsRead(meant: { readonly words: string } | string): Reading<string> {
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

export function wordsMathml(words: string): string {
	return `<mtext>${words.replace(/[&<]/g, '')}</mtext>`;
}

/** The only one of these words that begins as typed, or is it; null when there is none or more. */
export function begunBy(typed: string, words: readonly string[]): string | null {
	const start = plainText(typed);
	const whole = words.find((word) => word.toLowerCase() === start);
	const [only = null, ...others] = words.filter((word) => word.toLowerCase().startsWith(start));
	return whole ?? (others.length > 0 ? null : only);
}
