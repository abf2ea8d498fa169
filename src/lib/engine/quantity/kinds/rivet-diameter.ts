import { dashSizes } from './dash-sizes.ts';
import { anyLength, lengthMistakes } from './length.ts';
import { measured } from './measured.ts';

/** Stocked rivet diameters; the dash number counts 32nds: 1/8 in (−4). */
export const rivetDiameter = measured({
	...anyLength,
	id: 'rivet-diameter',
	noun: 'a rivet diameter',
	example: '−4 or 1/8 in',
	hint: 'A fraction, a decimal, mm or a dash number.',
	fractions: true,
	names: dashSizes({ is: 'diameter', perInch: 32, halves: false }),
	mistakes: { ...lengthMistakes, stocked: true }
});
