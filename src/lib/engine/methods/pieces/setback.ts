import { angle, fraction, length, number } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { thousandths } from '../../trade/tolerances.ts';

export const setbackOfBend = piece(
	'setback',
	{
		K: given(number, 'K for the bend angle'),
		R: given(fraction, 'Inside bend radius'),
		T: given(length, 'Thickness')
	},
	step('K * (R + T)', 'Setback', {
		symbol: 'setback',
		rule: 'bend.setback',
		tolerance: thousandths,
		slips: {
			noT: slip('K * R', 'T left out of the setback: it is K times R + T.'),
			diameter: slip('K * (2 * R + T)', 'Diameter taken for the radius in the setback.'),
			middle: slip(
				'K * (R + T / 2)',
				'Only half of T in the setback: the mold lines lie on the outside faces, so all of T counts.'
			),
			brackets: slip('K * R + T', 'K multiplied R only: it multiplies R and T together.'),
			allowance: slip(
				'bendAllowance(R, T, angle)',
				'That is the bend allowance: setback is K times R + T.'
			)
		}
	}),
	{ angle: given(angle, 'Bend angle, from flat', { symbol: 'N' }) }
);
