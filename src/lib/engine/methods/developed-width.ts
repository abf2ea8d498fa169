import { angle, count, fraction, length, listOf } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { atLeast, atMost, method, shown, slip, step, use } from '../solver/write.ts';
import { legOff } from './outcomes/leg-off.ts';
import { inches, nearRight } from './outcomes/near-right.ts';
import { allowanceOfBend } from './pieces/allowance.ts';
import { flat } from './pieces/flat.ts';
import { setbackOfBend } from './pieces/setback.ts';
import { setbackFactor } from './pieces/setback-k.ts';
import type { Tolerance } from '../solver/method.ts';
import { finerThanRule, layoutLine } from '../trade/tolerances.ts';

/** What the blank has too much or too little when all flats are laid out is in the last leg. */
const lastLeg = shown('right.flats + atLast(more, right.flats)');

/** How far the worst member of an answer is off; no number when it has more or fewer members. */
const worstOf = (key: 'flats' | 'allowances') =>
	shown(`max(largest(abs(${key} - right.${key})), largest(abs(right.${key} - ${key})))`);

const fits = 'Bent up, every leg comes out to its mold lines.';
const lastLegOff = (by: string) => `Bent up, the last leg comes out ${by}.`;
const worstFits = (tolerance: Tolerance) => `worst <= ${inches(tolerance)}`;

export const developedWidth = method({
	id: 'developed-width',
	title: 'Developed width of a bent part',
	given: {
		R: given(fraction, 'Inside bend radius'),
		T: given(length, 'Thickness'),
		legs: given(listOf(fraction), 'Mold line dimensions', { symbol: 'MLD' }),
		angles: given(listOf(angle), 'Bend angles, from flat', { symbol: 'N' })
	},
	steps: {
		K: use(
			setbackFactor,
			{ angle: 'angles' },
			{ label: 'K for each bend angle', asks: 'What is K for each bend?' }
		),
		setbacks: use(
			setbackOfBend,
			{ angle: 'angles' },
			{
				label: 'Setback at each bend',
				asks: 'What is the setback at each bend?',
				tolerance: layoutLine
			}
		),
		taken: step('atEachLeg(setbacks, legs)', 'Setbacks taken from each leg', {
			asks: 'How much setback comes off each leg?',

			symbol: 'SB taken',
			rule: 'bend.flat',
			tolerance: layoutLine,
			slips: {
				twice: slip(
					'forEach(2 * largest(setbacks), legs)',
					'Two setbacks taken from every leg. Outer leg: 1 setback; leg between bends: 2.'
				),
				once: slip(
					'forEach(largest(setbacks), legs)',
					'One setback taken from every leg. Outer leg: 1 setback; leg between bends: 2.'
				)
			}
		}),
		flats: use(
			flat,
			{ leg: 'legs' },
			{ label: 'Flats', asks: 'How long is each flat, between the bends?' }
		),
		allowances: use(
			allowanceOfBend,
			{ angle: 'angles' },
			{ label: 'Bend allowance at each bend', asks: 'How much metal does each bend take?' }
		),
		width: step('sum(flats) + sum(allowances)', 'Developed width', {
			asks: 'So how wide is the blank?',

			symbol: 'TDW',
			rule: 'bend.developed-width',
			tolerance: layoutLine,
			slips: {
				oneAllowance: slip(
					'sum(flats) + largest(allowances)',
					'Only one bend allowance added: each bend has its own.'
				),
				allowancePerLeg: slip(
					'sum(flats) + howMany(legs) * largest(allowances)',
					'A bend allowance for every leg: there is one bend less than legs.',
					{ rare: true }
				),
				noAllowance: slip(
					'sum(flats)',
					'Flats alone: the bends take metal too, so their allowances are added.'
				),
				allowanceOff: slip(
					'sum(flats) - sum(allowances)',
					'Bend allowances taken off: the bends take metal, so their allowances are added to the flats.'
				),
				lessTwoT: slip(
					'sum(legs) - 2 * T * howMany(angles)',
					'2T taken off at each bend: that makes inside sizes of the legs, not a developed width. Take off the setbacks and add the bend allowances.'
				),
				sum: slip(
					'sum(legs)',
					'That is the sum of the mold line dimensions: the blank comes out too wide.'
				),
				oneDeduction: slip(
					'sum(legs) - 2 * largest(setbacks) + largest(allowances)',
					'The setbacks and the allowance of one bend only: each bend has its own.',
					{ rare: true, late: true }
				),
				halfSetback: slip(
					'sum(legs) - sum(setbacks) + sum(allowances)',
					'One setback taken for each bend: a bend takes one from the leg on either side.'
				),
				oneSetback: slip(
					'sum(legs) - member(setbacks, 1) + sum(allowances)',
					'One setback taken in all: each bend takes one from the leg on either side.'
				),
				legLeftOut: slip(
					'sum(flats) + sum(allowances) - member(legs, howMany(legs))',
					'One leg was left out: every leg counts.'
				),
				flatLeftOut: slip(
					'sum(flats) + sum(allowances) - member(flats, howMany(legs) > 2 ? 2 : 1)',
					'One flat was left out: every flat counts, also one between two bends.',
					{ rare: true, late: true }
				),
				lastFlatLeftOut: slip(
					'sum(flats) + sum(allowances) - member(flats, howMany(flats))',
					'The last flat was left out: there is one flat more than bends.',
					{ rare: true, late: true }
				),
				lessOneT: slip(
					'sum(legs) - T * howMany(angles)',
					'T taken off at each bend: take off the setbacks and add the bend allowances.',
					{ rare: true }
				),
				legAndBendLeftOut: slip(
					'sum(flats) - member(flats, howMany(flats)) + sum(allowances) - member(allowances, howMany(allowances))',
					'One leg and its bend were left out: every leg counts, and every bend.',
					{ rare: true, late: true }
				)
			}
		})
	},
	limits: [
		atLeast(
			'flats',
			'0 in',
			'A leg is shorter than its setback: make it longer or the radius smaller.'
		),
		atMost(
			'width',
			'sum(legs)',
			'A developed width is less than the sum of the mold line dimensions: check the steps.'
		)
	],
	outcomes: [
		legOff(['flats'], {
			shows: {
				worst: worstOf('flats'),
				apart: shown('flats - right.flats'),
				leg: shown('placeOfLargest(abs(apart))', count),
				more: shown('member(apart, leg)'),
				made: shown('flats')
			},
			right: worstFits(layoutLine),
			fits,
			off: (by) => `Bent up, leg {leg} comes out ${by}, and no other leg is off by more.`
		}),
		legOff(['allowances'], {
			shows: {
				worst: worstOf('allowances'),
				more: shown('sum(allowances) - sum(right.allowances)'),
				made: lastLeg
			},
			right: worstFits(finerThanRule),
			fits,
			off: lastLegOff
		}),
		legOff(['width'], {
			shows: { more: shown('width - right.width'), made: lastLeg },
			right: nearRight('width', layoutLine),
			fits,
			off: lastLegOff
		})
	]
});
