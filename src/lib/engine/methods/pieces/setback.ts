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
		asks: 'How far does the bend tangent line lie from the mold line?',

		symbol: 'SB',
		rule: 'bend.setback',
		tolerance: thousandths,
		slips: {
			noT: slip('K * R', 'T left out of the setback: it is K times the sum of R and T.'),
			diameter: slip(
				'K * (2 * R + T)',
				'Twice R in the setback: R goes in once, for it is a radius.',
				{
					rare: true
				}
			),
			middle: slip(
				'K * (R + T / 2)',
				'Only half of T in the setback: the mold lines lie on the outside faces, so all of T counts.'
			),

			twoT: slip(
				'K * (R + 2 * T)',
				'T counted twice in the setback: it is K times the sum of R and T, with one T.'
			),
			minusT: slip(
				'K * (R - T)',
				'T taken off R in the setback: it is K times the sum of R and T.'
			),
			doubled: slip(
				'2 * K * (R + T)',
				'Two setbacks where one is meant: the mold line lies one setback past the bend tangent line.',
				{ rare: true }
			),
			radiusAlone: slip('R', 'R taken for the setback: it is K times the sum of R and T.', {
				rare: true
			}),
			noR: slip('K * T', 'R left out of the setback: it is K times the sum of R and T.', {
				rare: true
			}),
			halfR: slip(
				'K * (R / 2 + T)',
				'Half of R in the setback: R goes in whole, for it is the inside radius already.',
				{ rare: true }
			),
			onlyTByK: slip('R + K * T', 'K multiplied T only: it multiplies R and T together.', {
				rare: true
			}),
			addedK: slip('K * (1 in) + R + T', 'K was added to R + T: it multiplies them.', {
				rare: true
			}),
			tenfoldT: slip(
				'K * (R + 10 * T)',
				'T ten times too thick in the setback: check its decimal point.',
				{ rare: true }
			),
			halfOfIt: slip('K * (R + T) / 2', 'Half of the setback: K is for half the angle already.', {
				rare: true
			}),
			halfAllowance: slip(
				'bendAllowance(R, T, angle) / 2',
				'Half of the bend allowance was taken for the setback: the setback is K times the sum of R and T.',
				{ rare: true }
			),
			brackets: slip('K * R + T', 'K multiplied R only: it multiplies R and T together.'),
			allowance: slip(
				'bendAllowance(R, T, angle)',
				'The bend allowance was taken for the setback: the setback is K times the sum of R and T.'
			)
		}
	}),
	{ angle: given(angle, 'Bend angle, from flat', { symbol: 'N' }) }
);
