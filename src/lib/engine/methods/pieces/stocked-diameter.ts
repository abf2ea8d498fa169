import { length, rivetDiameter } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { stockedSize } from '../../trade/tolerances.ts';

export const nextStocked = 'stockedUp(threeT)';

/** The stocked diameter at or below 3T. */
export const stockedBelow = 'stockedDown(threeT)';

export const twiceTheDiameter = 'Twice the diameter: the dash number of a diameter counts 32nds.';

/** The next diameter up, for a part that carries stress. */
export const stockedDiameter = piece(
	'stocked-diameter',
	{ threeT: given(length, '3T') },
	step(nextStocked, 'Rivet diameter', {
		asks: 'Which stocked diameter is the smallest that will do?',
		rule: 'diameter.three-t',
		kind: rivetDiameter,
		tolerance: stockedSize,
		slips: {
			notStocked: slip(
				'threeT',
				'That is 3T, or near it, and no stocked size: take the next one up.'
			),
			down: slip(stockedBelow, 'Under 3T: take the next size up.'),
			nearest: slip(
				'nearest(threeT, 1/32 in)',
				'Rounded to the nearest 1/32 in: take the next stocked size up from 3T.',
				{ rare: true }
			),
			unstocked: slip(
				'max(upTo(threeT, 1/32 in), threeT > (5/32 in) ? (7/32 in) : (3/32 in))',
				'Over 3/16 in, stocked diameters step by 1/16 in: the bins do not hold that size.'
			),
			unstockedBelow: slip(
				'downTo(threeT, 1/32 in)',
				'Under 3T, and not stocked: over 3/16 in, diameters step by 1/16 in.',
				{ rare: true }
			),
			sixteenths: slip(
				'max(upTo(threeT, 1/16 in), 3/32 in)',
				'Rounded up to 1/16 in: diameters step by 1/32 in, lengths by 1/16 in.'
			),
			tooSmall: slip(
				`threeT > (3/32 in) ? (${nextStocked}) : upTo(threeT, 1/32 in)`,
				'Under 3/32 in, the minimum for a part that carries stress.'
			),
			in16ths: slip(`2 * (${nextStocked})`, twiceTheDiameter),
			twiceUnstocked: slip(
				'2 * max(upTo(threeT, 1/32 in), 3/32 in)',
				'Twice a size that the bins do not hold: a dash number counts 32nds, and over 3/16 in diameters step by 1/16 in.',
				{ rare: true, late: true }
			),
			dashOf16ths: slip(
				`(${nextStocked}) / 2`,
				'Half the diameter: the dash number of a diameter counts 32nds, not 16ths.',
				{ rare: true }
			),
			oneMore: slip(
				'threeT > (5/32 in) ? upTo(threeT, 1/16 in) + (1/16 in) : max(upTo(threeT, 1/32 in), 3/32 in) + (1/32 in)',
				'One size too large: the smallest stocked size from 3T up is enough, but 3/32 in at the least.'
			)
		}
	})
);
