import { length, rivetDiameter } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { stockedSize } from '../../trade/tolerances.ts';

/** The next diameter up, for a part that carries stress. */
export const stockedDiameter = piece(
	'stocked-diameter',
	{ threeT: given(length, 'Three times the thickest sheet') },
	step('max(upTo(threeT, 1/32 in), 3/32 in)', 'Rivet diameter', {
		rule: 'diameter.three-t',
		kind: rivetDiameter,
		tolerance: stockedSize,
		slips: {
			notStocked: slip('threeT', 'No rivet has this size: take the next 32nd up.'),
			down: slip(
				'downTo(threeT, 1/32 in)',
				'Rounded down: take the next size up, even when the smaller one is nearer.'
			),
			sixteenths: slip(
				'max(upTo(threeT, 1/16 in), 3/32 in)',
				'Rounded up to a 16th: rivet diameters step by 1/32 in, lengths by 1/16 in.'
			),
			tooSmall: slip(
				'upTo(threeT, 1/32 in)',
				'Under 3/32 in: that is too small for a part that carries stress.'
			)
		}
	})
);
