import { length, rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { atLeast, method, otherwise, outcome, slip, step, when } from '../solver/write.ts';
import { stockedSize, thousandths } from '../trade/tolerances.ts';
import { beside3T, diameterShows } from './outcomes/diameter.ts';
import { nearRight } from './outcomes/near-right.ts';
import { nextStocked, stockedBelow, twiceTheDiameter } from './pieces/stocked-diameter.ts';
import { threeT } from './pieces/three-t.ts';

const noBin = '{entered} is {times}T, but no bin holds it.';

const down = stockedBelow;

/** The two rivets that go with a sheet whose next 1/32 in above 3T is not stocked. */
export const rivetDiameterInRange = method({
	id: 'rivet-diameter-in-range',
	title: 'Rivet diameter within 2.5T to 3T, and above 3T',
	given: {
		thickest: given(length, 'Thickest sheet', { symbol: 'T' })
	},
	steps: {
		lowEnd: step('2.5 * thickest', '2.5T: the low end of the range', {
			asks: 'What is two and a half times the thickest sheet?',
			symbol: '2.5T',
			rule: 'diameter.range',
			tolerance: thousandths,
			slips: {
				twoForLow: slip('2 * thickest', '2T: the range begins at 2.5T.'),
				highForLow: slip('3 * thickest', 'That is 3T, the high end of the range.'),
				halfForLow: slip('0.5 * thickest', 'Half of T: the range begins at 2.5T.', { rare: true })
			}
		}),
		threeT,
		inRange: step(down, 'Stocked rivet within 2.5T to 3T', {
			asks: 'Which stocked rivet lies between 2.5T and 3T?',
			rule: 'diameter.range',
			kind: rivetDiameter,
			tolerance: stockedSize,
			slips: {
				highEnd: slip('threeT', 'That is 3T itself: take the stocked size below it.'),
				aboveForRange: slip(
					nextStocked,
					'Over 3T: that is the next stocked size above it, and not within the range.'
				),
				next32nd: slip(
					'upTo(threeT, 1/32 in)',
					'The next 1/32 in up is over 3T: the range ends at 3T.',
					// Where that is stocked, the next size up was taken for it.
					{ rare: true }
				),
				underRange: slip(
					'downTo(lowEnd, 1/32 in)',
					'Under 2.5T: take the stocked size within the range.'
				),
				twiceInRange: slip(`2 * (${down})`, twiceTheDiameter, { rare: true })
			}
		}),
		above: step(nextStocked, 'Next stocked rivet above 3T', {
			asks: 'Which stocked rivet comes next above 3T?',
			rule: 'diameter.three-t',
			kind: rivetDiameter,
			tolerance: stockedSize,
			slips: {
				unstockedAbove: slip(
					'upTo(threeT, 1/32 in)',
					'The next 1/32 in up is not stocked: take the next size that is.'
				),
				rangeForAbove: slip(
					down,
					'Within 2.5T to 3T: this asks for the next stocked size above 3T.'
				),
				threeTForAbove: slip('threeT', 'That is 3T itself: take the next stocked size up.'),
				secondAbove: slip(
					`threeT > (5/32 in) ? (${nextStocked}) : (${nextStocked}) + (1/32 in)`,
					'Two sizes above 3T: the next stocked size above it is enough.',
					{ rare: true, late: true }
				),
				oneMoreAbove: slip(
					`(${nextStocked}) + (1/16 in)`,
					'One size too large: the next stocked size above 3T is enough.'
				)
			}
		})
	},
	limits: [
		atLeast(
			'inRange',
			'lowEnd',
			'No stocked rivet lies within 2.5T to 3T: take the next size above 3T.'
		)
	],
	outcomes: [
		outcome(['inRange'], diameterShows('inRange'), {
			right: when(nearRight('inRange', stockedSize), '{entered} is {times}T, within 2.5T to 3T.'),
			over: when('inRange > 3 * thickest', '{entered} is {times}T, over the range of 2.5T to 3T.'),
			under: when('inRange < 2.5 * thickest', beside3T.under),
			unstocked: otherwise(noBin)
		}),
		outcome(['above'], diameterShows('above'), {
			right: when(
				nearRight('above', stockedSize),
				'{entered} is {times}T, the next stocked size above 3T.'
			),
			range: when('above <= 3 * thickest and above >= 2.5 * thickest', beside3T.inRange),
			under: when('above < 2.5 * thickest', beside3T.under),
			unstocked: when('above < right.above', noBin),
			over: otherwise(beside3T.over)
		})
	]
});
