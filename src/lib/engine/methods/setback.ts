import { angle, length, method, slip, step } from '../solver/method.ts';
import { chartFactor, thousandths } from '../trade/tolerances.ts';

export const setback = method({
	id: 'setback',
	title: 'Setback of a bend',
	given: {
		R: length('Inside bend radius', { style: 'fraction' }),
		T: length('Thickness'),
		angle: angle('Bend angle, from flat', { symbol: 'N' })
	},
	steps: {
		K: step('setbackK(angle)', 'K for the bend angle', {
			rule: 'bend.k',
			tolerance: chartFactor
		}),
		setback: step('K * (R + T)', 'Setback', { rule: 'bend.setback', tolerance: thousandths })
	},
	slips: {
		legs: slip(
			'K',
			'setbackK(180 deg - angle)',
			'K for the angle between the legs: the bend angle counts from flat.'
		),
		square: slip('K', '1', 'K taken as 1: it is 1 only for a bend of 90°.'),
		whole: slip(
			'K',
			'setbackK(2 * angle)',
			'Tangent of the whole bend angle: K is the tangent of half of it.'
		),
		halved: slip(
			'K',
			'setbackK(angle / 2)',
			'The angle was halved twice: the K chart takes the whole bend angle.'
		),
		share: slip(
			'K',
			'angle / 90 deg',
			'K taken as a share of 90°: it is a tangent and does not grow in step with the angle.'
		),
		noT: slip('setback', 'K * R', 'T left out: setback is K times R + T.'),
		diameter: slip('setback', 'K * (2 * R + T)', 'Diameter taken for the radius.'),
		middle: slip(
			'setback',
			'K * (R + T / 2)',
			'Only half of T: the mold lines lie on the outside faces, so all of T counts.'
		),
		brackets: slip('setback', 'K * R + T', 'K multiplied R only: it multiplies R and T together.'),
		allowance: slip(
			'setback',
			'(0.01743 * R + 0.0078 * T) * degrees(angle)',
			'That is the bend allowance: setback is K times R + T.'
		)
	}
});
