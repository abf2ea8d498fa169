import { dashSizes } from './dash-sizes.ts';
import { anyLength, lengthMistakes } from './length.ts';
import { measured } from './measured.ts';

/** Stocked rivet lengths; the dash number counts 16ths, halves among them: 5/16 in (−5). */
export const rivetLength = measured({
	...anyLength,
	id: 'rivet-length',
	noun: 'a rivet length',
	example: '−5 or 5/16 in',
	hint: 'A fraction, a decimal, mm or a dash number.',
	fractions: true,
	names: dashSizes({ is: 'length', perInch: 16, halves: true }),
	mistakes: { ...lengthMistakes, stocked: true }
});
