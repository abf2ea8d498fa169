import { angle } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { chartFactor } from '../../trade/tolerances.ts';

/** K for setback: the tangent of half the bend angle. */
export const setbackFactor = piece(
	'setback-k',
	{ angle: given(angle, 'Bend angle, from flat', { symbol: 'N' }) },
	step('setbackK(angle)', 'K for the bend angle', {
		asks: 'What is K for this bend?',

		symbol: 'K',
		rule: 'bend.k',
		tolerance: chartFactor,
		slips: {
			legs: slip(
				'setbackK(180 deg - angle)',
				'That goes by the angle between the legs: K is read for the bend angle, from flat.',
				{ act: 'legs' }
			),

			rowBefore: slip(
				'angle == 90 deg ? 1 : setbackK(angle - 1 deg)',
				'K for 1° less: read K in the row of the bend angle itself.'
			),
			rowAfter: slip(
				'angle == 90 deg ? 1 : setbackK(angle + 1 deg)',
				'K for 1° more: read K in the row of the bend angle itself.'
			),
			neutral: slip(
				'0.445',
				'0.445 is the place of the neutral line in the thickness: K for setback is the tangent of half the bend angle.',
				{ rare: true }
			),
			square: slip('1', 'K taken as 1: it is 1 only for a bend of 90°.'),
			whole: slip(
				'setbackK(360 deg - max(2 * angle, 360 deg - 2 * angle))',
				'Tangent of the whole bend angle: K is the tangent of half of it.',
				{ rare: true }
			),
			halved: slip(
				'setbackK(angle / 2)',
				'The angle was halved twice: the K chart is entered with the whole bend angle.',
				{ rare: true }
			),
			sine: slip(
				'halfSine(angle)',
				'The sine of half the bend angle was taken: K is its tangent.',
				{ rare: true }
			),
			inRadians: slip(
				'halfTangentInRadians(angle)',
				'The calculator took degrees for radians: set it to degrees. K for a bend of 90° is 1.',
				{ rare: true }
			),
			share: slip(
				'angle / 90 deg',
				'K taken as the angle divided by 90°: K is the tangent of half the angle.'
			)
		}
	})
);
