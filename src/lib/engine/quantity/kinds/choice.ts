import type { Listable } from './list.ts';
import { wordOptions } from './option-rules.ts';
import { worded } from './worded.ts';

/**
 * One of a few words, which may be typed in full or by the first letters, as long as only one
 * begins so.
 *
 * @param also what the shop says for some of them, by the word: `csk` for `countersunk`
 */
export function choice(
	words: readonly string[],
	also: Readonly<Record<string, readonly string[]>> = {}
): Listable<string, string> {
	return worded({
		id: 'choice',
		noun: `one of ${words.join(', ')}`,
		hint: `One of: ${words.join(', ')}.`,
		example: words[0] ?? '',
		choices: words,
		options: {
			...wordOptions,
			compare: (one, other) => words.indexOf(one) - words.indexOf(other)
		},
		meant(typed, { begunBy }) {
			const said = words.find((word) => also[word]?.includes(typed.toLowerCase()));
			const found = said ?? begunBy(typed, words);
			return found === null ? `Answer with one of: ${words.join(', ')}.` : { words: found };
		}
	});
}
