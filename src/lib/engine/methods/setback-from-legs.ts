import { angle, length, method, slip, step } from '../solver/method.ts';
import { chartFactor, halfDegree, thousandths } from '../trade/tolerances.ts';

export const setbackFromLegs = method({
	id: 'setback-from-legs',
	title: 'Setback from the angle between the legs',
	given: {
		R: length('Inside bend radius', { style: 'fraction' }),
		T: length('Thickness'),
		betweenLegs: angle('Angle between the legs')
	},
	steps: {
		angle: step('180 deg - betweenLegs', 'Bend angle, from flat', {
			symbol: 'N',
			rule: 'bend.angle',
			tolerance: halfDegree
		}),
		K: step('setbackK(angle)', 'K for the bend angle', {
			rule: 'bend.k',
			tolerance: chartFactor
		}),
		setback: step('K * (R + T)', 'Setback', { rule: 'bend.setback', tolerance: thousandths })
	},
	slips: {
		legs: slip(
			'angle',
			'betweenLegs',
			'That is the angle between the legs: the bend angle is 180° less it.'
		),
		fromSquare: slip(
			'angle',
			'max(90 deg - betweenLegs, betweenLegs - 90 deg)',
			'Counted from square: the bend angle counts from flat, 180° less the angle between the legs.'
		),
		square: slip('angle', '90 deg', 'Taken as a square bend: the drawing gives another angle.'),
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
		brackets: slip('setback', 'K * R + T', 'K multiplied R only: it multiplies R and T together.')
	}
});
