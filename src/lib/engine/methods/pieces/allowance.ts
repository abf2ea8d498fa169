import { angle, fraction, length } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { finerThanRule } from '../../trade/tolerances.ts';

/** Slips that are made of the whole formula and of its terms one by one alike. */
export const midThickness = slip(
	'3.1416 * (R + T / 2) * degrees(angle) / 180',
	'Right by the mid-thickness formula, R + T/2 times the angle in radians; this task asks for (0.01743 R + 0.0078 T) N.'
);
export const outerArc =
	'That is the arc of the outside face: R is the inside radius, and T takes 0.0078.';

export const allowanceOfBend = piece(
	'allowance',
	{
		R: given(fraction, 'Inside bend radius'),
		T: given(length, 'Thickness'),
		angle: given(angle, 'Bend angle, from flat', { symbol: 'N' })
	},
	step('(0.01743 * R + 0.0078 * T) * degrees(angle)', 'Bend allowance', {
		asks: 'So how much metal does the bend take?',

		symbol: 'BA',
		rule: 'bend.allowance',
		tolerance: finerThanRule,
		slips: {
			allowNoT: slip(
				'0.01743 * R * degrees(angle)',
				'The thickness term of the bend allowance was left out, or not multiplied by N: N multiplies both terms.'
			),
			brackets: slip(
				'0.01743 * R + 0.0078 * T * degrees(angle)',
				'The radius term of the allowance was not multiplied by N: N multiplies both terms.'
			),

			allowSquare: slip(
				'(0.01743 * R + 0.0078 * T) * 90',
				'Bend allowance for 90°: this bend has another angle.',
				{ act: 'square' }
			),
			allowSwapped: slip(
				'(0.0078 * R + 0.01743 * T) * degrees(angle)',
				'The constants of the bend allowance changed places: 0.01743 goes with R, 0.0078 with T.'
			),
			allowOneDegree: slip('0.01743 * R + 0.0078 * T', 'Bend allowance for 1°: multiply it by N.', {
				rare: true
			}),
			allowInnerArc: slip(
				'3.1416 * R * degrees(angle) / 180',
				'The arc of the inside face was taken for the bend allowance.',
				{ rare: true }
			),
			allowOuterArc: slip(
				'3.1416 * (R + T) * degrees(angle) / 180',
				'The arc of the outside face was taken for the bend allowance.',
				{ rare: true }
			),
			allowLegs: slip(
				'bendAllowance(R, T, 180 deg - angle)',
				'Bend allowance for the angle between the legs: N is the bend angle from flat.',
				{ act: 'legs' }
			),
			allowSetback: slip(
				'setbackK(angle) * (R + T)',
				'Setback taken for the bend allowance, or one setback for each bend taken off and no allowance added: what a bend takes is the length of metal in the curve.'
			),
			allowOutside: slip('0.01743 * (R + T) * degrees(angle)', outerArc),
			allowMiddle: midThickness,
			allowDiameter: slip(
				'(0.01743 * (2 * R) + 0.0078 * T) * degrees(angle)',
				'Twice R in the bend allowance: R goes in once, for it is a radius.'
			)
		}
	})
);
