import { choice, hundredths, length, rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { headJudgements } from '../trade/shop-head.ts';
import { exactWords, thousandths } from '../trade/tolerances.ts';

const limits = { rule: 'head.limits', tolerance: thousandths };

/** Accept or rework by the limits for A, AD, B and DD rivets. */
export const shopHeadCheck = method({
	id: 'shop-head-check',
	title: 'Shop head accepted or not',
	given: {
		D: given(rivetDiameter, 'Rivet diameter'),
		width: given(length, 'Measured width'),
		height: given(length, 'Measured height')
	},
	steps: {
		leastWidth: step('1.25 * D', 'Least width', {
			...limits,
			slips: {
				shankForLeast: slip('D', 'As wide as the shank: the least is 1.25 D.'),
				wantedForLeast: slip('1.5 * D', '1.5 D is the width wanted; down to 1.25 D is allowed.'),
				halfLeastWidth: slip(
					'1.25 * D / 2',
					'Half of 1.25 D: the radius was taken for the diameter.'
				)
			}
		}),
		mostWidth: step('1.66 * D', 'Most width', {
			...limits,
			slips: {
				wantedForMost: slip('1.5 * D', '1.5 D is the width wanted; up to 1.66 D is allowed.'),
				universalForMost: slip(
					'2 * D',
					'2 D is the width of the manufactured head; a shop head may have 1.66 D.'
				),
				halfMostWidth: slip(
					'1.66 * D / 2',
					'Half of 1.66 D: the radius was taken for the diameter.'
				)
			}
		}),
		leastHeight: step('0.33 * D', 'Least height', {
			...limits,
			slips: {
				wantedForLow: slip('0.5 * D', '0.5 D is the height wanted; down to 0.33 D is allowed.'),
				mostForLow: slip('0.66 * D', '0.66 D is the most height; the least is 0.33 D.'),
				halfLow: slip('0.33 * D / 2', 'Half of 0.33 D: the radius was taken for the diameter.')
			}
		}),
		mostHeight: step('0.66 * D', 'Most height', {
			...limits,
			slips: {
				wantedForHigh: slip('0.5 * D', '0.5 D is the height wanted; up to 0.66 D is allowed.'),
				leastForHigh: slip('0.33 * D', '0.33 D is the least height; the most is 0.66 D.'),
				shankForHigh: slip('D', 'As high as the shank is thick: the most is 0.66 D.')
			}
		}),
		judgement: step(
			'width > mostWidth or height < leastHeight ? "replace" : width < leastWidth or height > mostHeight ? "drive more" : "accept"',
			'Accept, drive more or replace',
			{
				rule: 'head.judged',
				tolerance: exactWords,
				kind: choice(headJudgements),
				slips: {
					widthAlone: slip(
						'width > mostWidth ? "replace" : width < leastWidth ? "drive more" : "accept"',
						'The width alone was judged; the height must be within its limits too.'
					),
					heightAlone: slip(
						'height < leastHeight ? "replace" : height > mostHeight ? "drive more" : "accept"',
						'The height alone was judged; the width must be within its limits too.'
					),
					accepted: slip(
						'"accept"',
						'A head is accepted only when its width and its height are both within the limits.'
					),
					drivenMore: slip(
						'"drive more"',
						'Driving on makes a head wider and flatter; that helps only one that is too narrow or too high.'
					),
					replaced: slip(
						'"replace"',
						'A rivet is drilled out only when its head is too wide or too flat; more driving cannot mend that.'
					)
				}
			}
		)
	},
	outcomes: [
		outcome(
			['judgement'],
			{
				// More blows: to 1.5 D across, or a tenth wider if it is that wide already.
				across: shown(
					'entered == "replace" ? 1.5 * D : entered == "accept" ? width : width < 1.45 * D ? 1.5 * D : 1.1 * width'
				),
				// The metal stays the same.
				high: shown('entered == "replace" ? 0.5 * D : height * (width / across)^2'),
				wide: shown('across / D', hundredths),
				tall: shown('high / D', hundredths)
			},
			{
				fresh: when(
					'entered == "replace" and right.judgement == "replace"',
					'Drilled out and driven new, it can be {wide} D across and {tall} D high, if the hole was not hurt.'
				),
				drilledForNothing: when(
					'entered == "replace"',
					'Drilled out for nothing, and the hole may be hurt: the head is neither too wide nor too flat.'
				),
				driven: when(
					'entered == "drive more" and right.judgement == "drive more"',
					'Driven on, it spreads and flattens to about {wide} D across and {tall} D high.'
				),
				drivenForNothing: when(
					'entered == "drive more"',
					'Driven on, it spreads and flattens to about {wide} D across and {tall} D high: that mends nothing here.'
				),
				left: when(
					'right.judgement == "accept"',
					'Left as it is, {wide} D across and {tall} D high: within the limits.'
				),
				bad: otherwise('Left as it is, {wide} D across and {tall} D high: outside the limits.')
			}
		)
	]
});
