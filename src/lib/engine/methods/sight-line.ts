import { angle, length, limit, method, slip, step } from '../solver/method.ts';
import { chartFactor, finerThanRule, thousandths } from '../trade/tolerances.ts';

/** Everything is measured on the flat blank from the edge of the leg that goes under the nose. */
export const sightLine = method({
	id: 'sight-line',
	title: 'Sight line for a brake',
	given: {
		leg: length('Leg under the nose, to the mold line', { style: 'fraction' }),
		R: length('Inside bend radius', { style: 'fraction' }),
		T: length('Thickness'),
		angle: angle('Bend angle, from flat', { symbol: 'N' })
	},
	steps: {
		K: step('setbackK(angle)', 'K for the bend angle', {
			rule: 'bend.k',
			tolerance: chartFactor
		}),
		setback: step('K * (R + T)', 'Setback', { rule: 'bend.setback', tolerance: thousandths }),
		tangentLine: step('leg - setback', 'Bend tangent line, from the edge of the leg', {
			rule: 'bend.flat',
			tolerance: finerThanRule
		}),
		sightLine: step('tangentLine + R', 'Sight line, from the edge of the leg', {
			rule: 'bend.sight-line',
			tolerance: finerThanRule
		})
	},
	slips: {
		legs: slip(
			'K',
			'setbackK(180 deg - angle)',
			'K for the angle between the legs: the bend angle counts from flat.'
		),
		square: slip('K', '1', 'K taken as 1: it is 1 only for a bend of 90°.'),
		noT: slip('setback', 'K * R', 'T left out of the setback: it is K times R + T.'),
		noSetback: slip(
			'tangentLine',
			'leg',
			'No setback taken off: the tangent line lies a setback short of the mold line.'
		),
		added: slip(
			'tangentLine',
			'leg + setback',
			'Setback added: the tangent line lies a setback short of the mold line.'
		),
		middle: slip(
			'sightLine',
			'tangentLine + (0.01743 * R + 0.0078 * T) * degrees(angle) / 2',
			'In the middle of the bend allowance: the sight line is one radius from the tangent line under the nose.'
		),
		outward: slip(
			'sightLine',
			'tangentLine - R',
			'On the wrong side: the sight line lies in the bend, past the tangent line.'
		),
		atTangent: slip(
			'sightLine',
			'tangentLine',
			'That is the bend tangent line: the sight line is one radius past it.'
		),
		plusT: slip(
			'sightLine',
			'tangentLine + R + T',
			'T added: the nose reaches one radius past the tangent line, and no more.'
		),
		otherLeg: slip(
			'sightLine',
			'tangentLine + (0.01743 * R + 0.0078 * T) * degrees(angle) - R',
			'Measured from the other tangent line: use the one that goes under the nose.'
		)
	},
	limits: [
		limit(
			'tangentLine',
			'The leg is shorter than its setback: make it longer or the radius smaller.'
		)
	]
});
