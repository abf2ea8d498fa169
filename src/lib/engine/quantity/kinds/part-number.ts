import { worded } from './worded.ts';

const example = 'MS20470AD4-5';
/** Sizes may have a fraction: somebody who counts in other parts comes to half a dash number. */
const isWhole = /^(?:MS20|AN)\d{3}[A-Z]{1,2}\d{1,3}(?:[.]\d+)?-\d{1,3}(?:[.]\d+)?$/;
const begins = /^(?:MS|AN)/i;
/** The end of a part number, `AD4-5`, `470AD4-5` or `4-5`. */
const isEnd = /^(?:20)?(?:\d{3})?-?[a-z]{0,2}-?\d{1,2}-\d{1,3}$/i;

/** What is to be written instead of something that is no whole part number. */
function partial(value: string, right: string): string | null {
	if (!isWhole.test(right) || isWhole.test(value)) return null;
	if (begins.test(value))
		return `Write it like ${example}: standard, head, letters, diameter, dash, length.`;
	const isPart = isEnd.test(value.replace(/[\s.]/g, ''));
	return isPart ? 'Write the whole number, from MS or AN on.' : null;
}

/** A rivet's part number; written in any way, it is taken as the standard writes it. */
export const partNumber = worded({
	id: 'part-number',
	noun: 'a part number',
	hint: 'Letters and numbers as on the bag.',
	example,
	partial,
	meant: (words, { normalPartNumber }) => ({ words: normalPartNumber(words) ?? words })
});
