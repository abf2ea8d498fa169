import { worded } from './worded.ts';

/** Words as they stand. */
export const word = worded({
	id: 'word',
	noun: 'words',
	hint: 'Letters and numbers as they stand.',
	example: '2024-T3',
	meant: (words) => ({ words })
});
