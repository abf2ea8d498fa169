import { angles, length, lengths, limit, method, slip, step } from '../solver/method.ts';
import { chartFactor, finerThanRule, layoutLine, thousandths } from '../trade/tolerances.ts';

export const developedWidth = method({
	id: 'developed-width',
	title: 'Developed width of a bent part',
	given: {
		R: length('Inside bend radius', { style: 'fraction' }),
		T: length('Thickness'),
		legs: lengths('Mold line dimensions', { style: 'fraction' }),
		angles: angles('Bend angles, from flat', { symbol: 'N' })
	},
	steps: {
		K: step('setbackK(angles)', 'K for each bend angle', {
			rule: 'bend.k',
			tolerance: chartFactor
		}),
		setbacks: step('K * (R + T)', 'Setback at each bend', {
			symbol: 'setback',
			rule: 'bend.setback',
			tolerance: thousandths
		}),
		taken: step('atEachLeg(setbacks, legs)', 'Setbacks taken from each leg', {
			symbol: 'setbacks taken',
			rule: 'bend.flat',
			tolerance: finerThanRule
		}),
		flats: step('legs - taken', 'Flats', {
			symbol: 'flat',
			rule: 'bend.flat',
			tolerance: finerThanRule
		}),
		allowances: step(
			'(0.01743 * R + 0.0078 * T) * degrees(angles)',
			'Bend allowance at each bend',
			{ symbol: 'allowance', rule: 'bend.allowance', tolerance: finerThanRule }
		),
		width: step('sum(flats) + sum(allowances)', 'Developed width', {
			rule: 'bend.developed-width',
			tolerance: layoutLine
		})
	},
	slips: {
		square: slip('K', 'forEach(1, angles)', 'K taken as 1: it is 1 only for a bend of 90°.'),
		legsAngle: slip(
			'K',
			'setbackK(180 deg - angles)',
			'K for the angle between the legs: the bend angle counts from flat.'
		),
		noT: slip('setbacks', 'K * R', 'T left out of the setback: it is K times R + T.'),
		diameter: slip('setbacks', 'K * (2 * R + T)', 'Diameter taken for the radius in the setback.'),
		once: slip(
			'taken',
			'forEach(largest(setbacks), legs)',
			'One setback taken from every leg: a leg between two bends loses one at each end.'
		),
		moldLines: slip(
			'flats',
			'legs',
			'Mold line dimensions taken as flats: a setback comes off at each bent end.'
		),
		inside: slip(
			'flats',
			'legs - T',
			'T taken off each leg: a flat ends at the bend tangent line, a setback from the mold line.'
		),
		allowNoT: slip(
			'allowances',
			'0.01743 * R * degrees(angles)',
			'The thickness term of the bend allowance was left out.'
		),
		brackets: slip(
			'allowances',
			'0.01743 * R + 0.0078 * T * degrees(angles)',
			'The radius term of the allowance was not multiplied by N: N multiplies both terms.'
		),
		allowLegs: slip(
			'allowances',
			'(0.01743 * R + 0.0078 * T) * degrees(180 deg - angles)',
			'Bend allowance for the angle between the legs: N is the bend angle from flat.'
		),
		allowSetback: slip('allowances', 'setbacks', 'Setback taken for the bend allowance.'),
		oneAllowance: slip(
			'width',
			'sum(flats) + largest(allowances)',
			'Only one bend allowance added: every bend has its own.'
		),
		noAllowance: slip(
			'width',
			'sum(flats)',
			'Flats alone: the bends take metal too, so their allowances are added.'
		),
		sum: slip('width', 'sum(legs)', 'Mold line dimensions added up: the blank comes out too wide.'),
		halfSetback: slip(
			'width',
			'sum(legs) - sum(setbacks) + sum(allowances)',
			'One setback taken for each bend: a bend takes one from the leg on either side.'
		)
	},
	limits: [
		limit(
			'smallest(flats)',
			'A leg is shorter than its setback: make it longer or the radius smaller.'
		),
		limit(
			'sum(legs) - width',
			'A developed width is less than the mold line dimensions added up: check the steps.'
		)
	]
});
