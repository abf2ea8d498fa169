import type { KindAnswers } from '../kind.ts';

/**
 * What a kind of words is asked once something was answered. They are right when they are the very ones.
 *
 * @param partial what is to be written instead of only a part of it; null where it is no part
 */
export const wordAnswers = (
	partial?: (value: string, right: string) => string | null
): KindAnswers<string, string> => ({
	judge({ value }, right) {
		if (value === right) return { is: 'right' };
		const says = partial?.(value, right) ?? null;
		return says === null ? { is: 'off' } : { is: 'partial', says };
	},
	isWritten: ({ value }, other) => value === other,
	toValue: ({ value }) => value,
	scaled: (entry) => entry,
	mathml: wordsMathml
});

export function wordsMathml(words: string): string {
	return `<mtext>${words.replace(/[&<]/g, '')}</mtext>`;
}
