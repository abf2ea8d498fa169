import { angle, fraction, length } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { finerThanRule } from '../../trade/tolerances.ts';

export const allowanceOfBend = piece(
	'allowance',
	{
		R: given(fraction, 'Inside bend radius'),
		T: given(length, 'Thickness'),
		angle: given(angle, 'Bend angle, from flat', { symbol: 'N' })
	},
	step('(0.01743 * R + 0.0078 * T) * degrees(angle)', 'Bend allowance', {
		symbol: 'allowance',
		rule: 'bend.allowance',
		tolerance: finerThanRule,
		slips: {
			allowNoT: slip(
				'0.01743 * R * degrees(angle)',
				'The thickness term of the bend allowance was left out.'
			),
			brackets: slip(
				'0.01743 * R + 0.0078 * T * degrees(angle)',
				'The radius term of the allowance was not multiplied by N: N multiplies both terms.'
			),
			allowLegs: slip(
				'bendAllowance(R, T, 180 deg - angle)',
				'Bend allowance for the angle between the legs: N is the bend angle from flat.'
			),
			allowSetback: slip('setbackK(angle) * (R + T)', 'Setback taken for the bend allowance.')
		}
	})
);
