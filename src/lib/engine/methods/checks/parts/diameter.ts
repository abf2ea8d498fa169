import { rivetDiameter } from '../../../quantity/kinds.ts';
import { keep } from '../../../solver/checked.ts';
import { given } from '../../../solver/given.ts';
import { atLeast, atMost } from '../../../solver/write.ts';

const what = 'Rivet diameter';

/** The rivet that was taken, against 3T and the next size up. */
export const rivetTaken = {
	measured: { measured: given(rivetDiameter, 'Diameter of the rivet') },
	each: 'rivet',
	keeps: [
		keep(
			atLeast('measured', 'threeT', 'Thinner than 3T of the thickest sheet.', {
				what,
				rule: 'diameter.three-t'
			}),
			'diameter',
			'Take the next larger rivet before you drill. The handbook also gives 2.5T to 3T as the general range: ask if the drawing names this rivet.'
		),
		// A shank as measured is seldom the nominal size: from half a step on it is another size.
		keep(
			atLeast('measured', '(3/32 in) - (1/64 in)', 'Too thin for a part that carries stress.', {
				what,
				rule: 'diameter.least'
			}),
			'diameter',
			'Take a rivet of 3/32 in or more.'
		),
		keep(
			atMost('measured', 'diameter + (1/64 in)', 'Nearer to a larger size than is wanted.', {
				what,
				rule: 'diameter.three-t'
			}),
			'diameter',
			'Take the next size above 3T: a thicker rivet takes metal out of the sheet.'
		)
	]
};
