import { angle, fraction, length } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, shown, slip, step } from '../solver/write.ts';
import { legOff } from './outcomes/leg-off.ts';
import { nearRight } from './outcomes/near-right.ts';
import { finerThanRule, thousandths } from '../trade/tolerances.ts';

/*
 * The sum in the rule is multiplied out, N into each term: the allowance for one degree is so
 * small that rounding it to thousandths would spoil the answer.
 */
export const bendAllowance = method({
	id: 'bend-allowance',
	title: 'Bend allowance by the handbook formula',
	given: {
		R: given(fraction, 'Inside bend radius'),
		T: given(length, 'Thickness'),
		angle: given(angle, 'Bend angle, from flat', { symbol: 'N' })
	},
	steps: {
		forRadius: step('0.01743 * R * degrees(angle)', 'Radius term', {
			symbol: 'radius term',
			rule: 'bend.allowance',
			tolerance: thousandths,
			slips: {
				brackets: slip(
					'0.01743 * R',
					'The radius term was not multiplied by N. The formula is also printed without its brackets, but N multiplies both terms.'
				),
				diameter: slip('0.01743 * (2 * R) * degrees(angle)', 'Diameter taken for the radius.'),
				outside: slip(
					'0.01743 * (R + T) * degrees(angle)',
					'Outside radius taken: R is the inside radius.'
				),
				swappedR: slip(
					'0.0078 * R * degrees(angle)',
					'0.0078 goes with the thickness; the radius takes 0.01743.'
				)
			}
		}),
		forThickness: step('0.0078 * T * degrees(angle)', 'Thickness term', {
			symbol: 'thickness term',
			rule: 'bend.allowance',
			tolerance: thousandths,
			slips: {
				noT: slip('0.0078 * T', 'The thickness term was left out or not multiplied by N.'),
				swappedT: slip(
					'0.01743 * T * degrees(angle)',
					'0.01743 goes with the radius; the thickness takes 0.0078.'
				),
				halfT: slip('0.0078 * (T / 2) * degrees(angle)', 'Half of T: the formula takes all of it.')
			}
		}),
		allowance: step('forRadius + forThickness', 'Bend allowance', {
			rule: 'bend.allowance',
			tolerance: finerThanRule,
			slips: {
				legs: slip(
					'bendAllowance(R, T, 180 deg - angle)',
					'Worked with the angle between the legs: N is the bend angle from flat.'
				),
				square: slip(
					'(0.01743 * R + 0.0078 * T) * 90',
					'That is the allowance for 90°; this bend has another angle.'
				),
				early: slip(
					'nearest(0.01743 * R + 0.0078 * T, 0.001 in) * degrees(angle)',
					'The allowance for one degree was rounded to thousandths first: round after multiplying by N.'
				),
				middle: slip(
					'3.1416 * (R + T / 2) * degrees(angle) / 180',
					'Right by the mid-thickness formula, 2π (R + T/2) ÷ 4 for 90°; this task asks for (0.01743 R + 0.0078 T) N.'
				),
				setback: slip(
					'setbackK(angle) * (R + T)',
					'That is the setback: the allowance is the length of metal in the curve.'
				)
			}
		})
	},
	outcomes: [
		// What the blank has too much or too little in the bend ends up in the leg that is left free.
		legOff(['allowance'], {
			shows: { more: shown('allowance - right.allowance') },
			right: nearRight('allowance', finerThanRule),
			fits: 'With {allowance} allowed for the bend, the last leg comes out to its mold line.',
			off: (by) => `With {allowance} allowed for the bend, the last leg comes out ${by}.`
		})
	]
});
