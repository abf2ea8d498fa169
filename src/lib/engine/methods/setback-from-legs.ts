import { angle, length, method, slip, step } from '../solver/method.ts';
import { halfDegree } from '../trade/tolerances.ts';
import { setback } from './setback.ts';

const { whole, halved, share, noT, diameter, middle, brackets } = setback.slips;

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
		...setback.steps
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
		// Once the bend angle is known, the same slips as there.
		whole,
		halved,
		share,
		noT,
		diameter,
		middle,
		brackets
	}
});
