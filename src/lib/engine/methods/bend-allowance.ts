import { angle, fraction, length } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, shown, slip, step } from '../solver/write.ts';
import { legOff } from './outcomes/leg-off.ts';
import { nearRight } from './outcomes/near-right.ts';
import { midThickness, outerArc } from './pieces/allowance.ts';
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
			asks: 'What does the radius add to the bend allowance?',

			symbol: 'radius term',
			rule: 'bend.allowance',
			tolerance: thousandths,
			slips: {
				legsForRadius: slip(
					'0.01743 * R * degrees(180 deg - angle)',
					'The part for R was worked with the angle between the legs: N is the bend angle from flat.',
					{ act: 'legs' }
				),
				squareForRadius: slip(
					'0.01743 * R * 90',
					'The part for R was worked for 90°: this bend has another angle.',
					{ act: 'square' }
				),
				radiusTenfold: slip(
					'0.1743 * R * degrees(angle)',
					'Ten times too much for the radius: its constant is 0.01743.'
				),
				radiusTenth: slip(
					'0.001743 * R * degrees(angle)',
					'A tenth of it for the radius: its constant is 0.01743.'
				),
				navyForRadius: slip(
					'0.0173 * R * degrees(angle)',
					'By the Navy’s 0.0173 this part is right; this task asks for 0.01743.',
					{ late: true }
				),
				radiusDigits: slip(
					'0.01473 * R * degrees(angle)',
					'0.01473 was taken for 0.01743: two digits changed places.',
					{ rare: true }
				),
				halfRadius: slip(
					'0.01743 * (R / 2) * degrees(angle)',
					'Half of R was taken: R goes in whole, for it is the inside radius already.',
					{ rare: true }
				),
				brackets: slip(
					'0.01743 * R',
					'The radius term was not multiplied by N: N multiplies both terms.'
				),
				diameter: slip(
					'0.01743 * (2 * R) * degrees(angle)',
					'Twice R was taken: R goes in once, for it is a radius.'
				),
				outside: slip(
					'0.01743 * (R + T) * degrees(angle)',
					'Outside radius taken for R: R is the inside radius.'
				),
				thicknessForR: slip(
					'0.01743 * T * degrees(angle)',
					'0.01743 was multiplied by T: it goes with the radius.',
					{ rare: true, late: true }
				),
				swappedR: slip(
					'0.0078 * R * degrees(angle)',
					'0.0078 goes with the thickness; the radius takes 0.01743.'
				)
			}
		}),
		forThickness: step('0.0078 * T * degrees(angle)', 'Thickness term', {
			asks: 'What does the thickness add to it?',

			symbol: 'thickness term',
			rule: 'bend.allowance',
			tolerance: thousandths,
			slips: {
				legsForThickness: slip(
					'0.0078 * T * degrees(180 deg - angle)',
					'Thickness term for the angle between the legs: N is the bend angle from flat.',
					{ act: 'legs' }
				),
				squareForThickness: slip(
					'0.0078 * T * 90',
					'Thickness term for 90°: this bend has another angle.',
					{ act: 'square' }
				),
				thicknessTenfold: slip(
					'0.078 * T * degrees(angle)',
					'Ten times too much for the thickness: check the point in 0.0078 and in T.'
				),
				radiusForThickness: slip(
					'0.0078 * R * degrees(angle)',
					'0.0078 was multiplied by R: it goes with the thickness.',
					{ rare: true }
				),
				noT: slip('0.0078 * T', 'The thickness term was left out, or not multiplied by N.', {
					act: 'noT'
				}),
				swappedT: slip(
					'0.01743 * T * degrees(angle)',
					'0.01743 was taken for the thickness: the thickness takes 0.0078.'
				),
				halfT: slip(
					'0.0078 * (T / 2) * degrees(angle)',
					'Half of T in the thickness term: the formula takes all of it.'
				),
				noneForThickness: slip(
					'0 * T',
					'The thickness term was left out: what is left is the arc of the inside face.',
					{ act: 'noT', late: true }
				)
			}
		}),
		allowance: step('forRadius + forThickness', 'Bend allowance', {
			asks: 'So how much metal does the bend take?',

			symbol: 'BA',
			rule: 'bend.allowance',
			tolerance: finerThanRule,
			slips: {
				constantsSwapped: slip(
					'(0.0078 * R + 0.01743 * T) * degrees(angle)',
					'0.01743 goes with R and 0.0078 with T: they changed places.'
				),
				insideArc: slip(
					'3.1416 * R * degrees(angle) / 180',
					'That is the arc of the inside face: the thickness term is missing.',
					{ rare: true }
				),
				outsideArc: slip('3.1416 * (R + T) * degrees(angle) / 180', outerArc),
				oneDegree: slip(
					'0.01743 * R + 0.0078 * T',
					'That is the allowance for 1°: multiply it by N.',
					{ rare: true }
				),
				subtracted: slip(
					'forRadius - forThickness',
					'The thickness term was taken off: the two terms are added.',
					{ rare: true }
				),
				halfAngle: slip(
					'(0.01743 * R + 0.0078 * T) * degrees(angle) / 2',
					'Worked with half the bend angle: only K is for half of it, the allowance takes all of N.',
					{ rare: true }
				),
				twoSetbacks: slip(
					'2 * setbackK(angle) * (R + T)',
					'That is two setbacks: the allowance is the length of metal in the curve.',
					{ rare: true }
				),
				radiusAndT: slip(
					'R + T',
					'That is R + T, the setback of a square bend: the allowance is the length of metal in the curve.',
					{ rare: true }
				),
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
					'The allowance for 1° was rounded to thousandths first: multiply by N, then round.'
				),
				twiceAllowance: slip(
					'2 * (0.01743 * R + 0.0078 * T) * degrees(angle)',
					'Twice the allowance: this asks for one bend, and R is a radius, T one thickness.',
					{ rare: true, late: true }
				),
				middle: midThickness,
				navy: slip(
					'(0.0173 * R + 0.0078 * T) * degrees(angle)',
					'Right by the Navy’s formula with 0.0173; this task asks for 0.01743.'
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
