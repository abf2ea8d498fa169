import type { Meant } from '../read-words.ts';
import { type Reader, readWith, workWith } from '../reader.ts';
import { dimension } from '../units.ts';
import { wordAnswers } from './answers/words.ts';
import type { Kind } from './kind.ts';
import type { Listable } from './list.ts';
import { noMistakes } from './mistakes.ts';
import { wordOptions } from './option-rules.ts';

/** Words: formulas look them up and put them together, and compute nothing with them. */
export const text = dimension({ name: 'text', noun: 'words', unit: '', formula: null, units: [] });

/** What kinds of words have alike: nothing in them is a number. */
export const wordsOnly = {
	dimension: text,
	keys: 'text',
	choices: [],
	isList: false,
	fine: 1,
	most: null,
	mistakes: noMistakes,
	isSound: () => true,
	numbers: () => [],
	map: <V>(value: V) => value,
	nearest64: () => '',
	plain: <V>(value: V) => value
} as const;

/** What is special about a kind of words. */
interface Parts {
	readonly id: string;
	readonly noun: string;
	readonly hint: string;
	readonly example: string;
	readonly choices?: readonly string[];
	readonly options?: Kind<string, string>['options'];
	/** What is to be written instead of only a part of it; null where it is no part. */
	readonly partial?: (value: string, right: string) => string | null;
	/** The words meant, or a sentence that says what to write. */
	readonly meant: (typed: string, reader: Reader) => Meant;
}

/** Makes a kind of words. */
export function worded({ example, meant, partial, ...parts }: Parts): Listable<string, string> {
	const readBy = (typed: string) => (reader: Reader) =>
		reader.readWords(typed, example, (words) => meant(words, reader));
	const readAllBy = (typed: string) => (reader: Reader) =>
		reader.readWordList(typed, example, (words) => meant(words, reader));
	const kind: Listable<string, string> = {
		...wordsOnly,
		options: wordOptions,
		...parts,
		get member() {
			return kind;
		},
		example: () => example,
		read: (typed) => readWith(typed, readBy(typed)),
		readAll: (typed) => readWith(typed, readAllBy(typed)),
		workAll: (typed) => workWith(readAllBy(typed)),
		writeAll: (values) => values.join(', '),
		work: (typed) => workWith(readBy(typed)),
		...wordAnswers(partial),
		differs: (one, other) => one !== other,
		members: (value) => [value],
		write: (value) => value
	};
	return kind;
}
