import { angle } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { chartFactor } from '../../trade/tolerances.ts';

/** K for setback: the tangent of half the bend angle. */
export const setbackFactor = piece(
	'setback-k',
	{ angle: given(angle, 'Bend angle, from flat', { symbol: 'N' }) },
	step('setbackK(angle)', 'K for the bend angle', {
		symbol: 'K',
		rule: 'bend.k',
		tolerance: chartFactor,
		slips: {
			legs: slip(
				'setbackK(180 deg - angle)',
				'K for the angle between the legs: the bend angle counts from flat.'
			),
			square: slip('1', 'K taken as 1: it is 1 only for a bend of 90°.'),
			whole: slip(
				'setbackK(2 * angle)',
				'Tangent of the whole bend angle: K is the tangent of half of it.'
			),
			halved: slip(
				'setbackK(angle / 2)',
				'The angle was halved twice: the K chart takes the whole bend angle.'
			),
			share: slip(
				'angle / 90 deg',
				'K taken as a share of 90°: it is a tangent and does not grow in step with the angle.'
			)
		}
	})
);
