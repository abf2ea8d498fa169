import { worded } from './worded.ts';

const isWhole = /^[A-Z]{2}\d+[A-Z]+\d+-\d/;
/** The end of a part number, `AD4-5`, `470AD4-5` or `4-5`. */
const isEnd = /^(?:20)?(?:\d{3})?-?[a-z]{0,2}-?\d{1,2}-\d{1,2}$/i;

/** A rivet's part number; written in any way, it is taken as the standard writes it. */
export const partNumber = worded({
	id: 'part-number',
	noun: 'a part number',
	hint: 'Letters and numbers as on the bag.',
	example: 'MS20470AD4-5',
	partial: (value, right) =>
		isWhole.test(right) && isEnd.test(value.replace(/[\s.]/g, ''))
			? 'Write the whole number, from MS or AN on.'
			: null,
	meant: (words, { normalPartNumber }) => ({ words: normalPartNumber(words) ?? words })
});
