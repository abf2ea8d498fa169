import { worded } from './worded.ts';

/** A rivet's part number; written in any way, it is taken as the standard writes it. */
export const partNumber = worded({
	id: 'part-number',
	noun: 'a part number',
	hint: 'Letters and numbers as on the bag.',
	example: 'MS20470AD4-5',
	meant: (words, { normalPartNumber }) => ({ words: normalPartNumber(words) ?? words })
});
