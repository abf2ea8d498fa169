import { ratio } from '../exact.ts';
import { anyLength, lengthMistakes } from './length.ts';
import { measured } from './measured.ts';

/** The fraction of an inch when it is one of 64ths, else decimal inches: 3/8 in. */
export const fraction = measured({
	id: 'fraction',
	...anyLength,
	fractions: true,
	mistakes: {
		...lengthMistakes,
		units: [
			...(lengthMistakes.units ?? []),
			{
				id: 'thirty-seconds',
				factor: ratio(1n, 32n),
				says: 'That counts 32nds; write inches or a dash number.'
			}
		]
	}
});
