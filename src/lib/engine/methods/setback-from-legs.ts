import { angle, length } from '../solver/given.ts';
import { method, slip, step } from '../solver/write.ts';
import { setbackOfBend } from './pieces/setback.ts';
import { setbackFactor } from './pieces/setback-k.ts';
import { halfDegree } from '../trade/tolerances.ts';

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
			tolerance: halfDegree,
			slips: {
				legs: slip(
					'betweenLegs',
					'That is the angle between the legs: the bend angle is 180° less it.'
				),
				fromSquare: slip(
					'max(90 deg - betweenLegs, betweenLegs - 90 deg)',
					'Counted from square: the bend angle counts from flat, 180° less the angle between the legs.'
				),
				square: slip('90 deg', 'Taken as a square bend: the drawing gives another angle.')
			}
		}),
		K: setbackFactor,
		setback: setbackOfBend
	}
});
