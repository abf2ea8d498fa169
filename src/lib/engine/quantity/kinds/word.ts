import { worded } from './worded.ts';
import { plain } from './plain.ts';

/** Words as they stand. */
export const word = plain(
	worded({
		id: 'word',
		noun: 'words',
		hint: 'Letters and numbers as they stand.',
		example: '2024-T3',
		meant: (words) => ({ words })
	})
);
