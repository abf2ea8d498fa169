import { choice, hundredths, length, rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { headJudgements } from '../trade/shop-head.ts';
import { exactWords, thousandths } from '../trade/tolerances.ts';

const limits = { rule: 'head.limits', tolerance: thousandths };

/** Metal that is spread too far comes back by no driving; what is not spread enough can be driven. */
const isBeyond = 'width > mostWidth or height < leastHeight';
const isShort = 'width < leastWidth or height > mostHeight';
const judged = `${isBeyond} ? "replace" : ${isShort} ? "drive more" : "accept"`;

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
		leastWidth: step('1.25 * D', 'Minimum width', {
			asks: 'How narrow may the shop head be?',

			...limits,
			slips: {
				shankForLeast: slip('D', 'As wide as the shank: the minimum is 1.25D.', { rare: true }),
				wantedForLeast: slip('1.5 * D', '1.5D is the width wanted; the minimum is 1.25D.'),
				dashForLeast: slip(
					'2 * 1.25 * D',
					'Twice 1.25D: the dash number of D counts 32nds, not 16ths.'
				),
				minimum13: slip('1.3 * D', '1.3D: the minimum is 1.25D.', { rare: true }),
				otherForLeast: slip(
					'1.4 * D',
					'1.4D is wanted of D, E and M rivets; the minimum is 1.25D.',
					{ rare: true }
				),
				measuredForLeast: slip('width', 'That is the width as measured; the minimum is 1.25D.', {
					rare: true
				}),
				mostForLeast: slip('1.66 * D', '1.66D is the maximum width; the minimum is 1.25D.'),
				halfLeastWidth: slip(
					'1.25 * D / 2',
					'Half of 1.25D: the radius was taken for the diameter.',
					{ rare: true }
				)
			}
		}),
		mostWidth: step('1.66 * D', 'Maximum width', {
			asks: 'How wide may the shop head be?',

			...limits,
			slips: {
				wantedForMost: slip(
					'1.5 * D',
					'1.5D is the width wanted, and the maximum of D, E and M rivets; the maximum here is 1.66D.'
				),
				quarterMore: slip('1.75 * D', '1.75D is 0.25D over the 1.5D wanted; the maximum is 1.66D.'),
				dashForMost: slip(
					'2 * 1.66 * D',
					'Twice 1.66D: the dash number of D counts 32nds, not 16ths.',
					{ rare: true }
				),
				sixDropped: slip('1.6 * D', '1.6D: the maximum is 1.66D.', { rare: true }),
				otherMostWidth: slip(
					'1.4 * D',
					'1.4D is wanted of D, E and M rivets; the maximum is 1.66D.',
					{ rare: true }
				),
				universalForMost: slip(
					'2 * D',
					'2D is the width of the manufactured head; a shop head may have 1.66D.',
					{ rare: true }
				),
				halfMostWidth: slip(
					'1.66 * D / 2',
					'Half of 1.66D: the radius was taken for the diameter.',
					{ rare: true }
				)
			}
		}),
		leastHeight: step('0.33 * D', 'Minimum height', {
			asks: 'How low may the shop head be?',

			...limits,
			slips: {
				wantedForLow: slip(
					'0.5 * D',
					'0.5D is the height wanted, and the minimum of D, E and M rivets; the minimum here is 0.33D.'
				),
				quarterForLow: slip('0.25 * D', 'A quarter of D: the minimum is 0.33D.', { rare: true }),
				minimum03: slip('0.3 * D', '0.3D: the minimum is 0.33D.', { rare: true }),
				halfMeasured: slip(
					'width / 2',
					'Half of the width as measured; the minimum height is 0.33D.',
					{ rare: true }
				),
				mostForLow: slip(
					'0.66 * D',
					'That is 0.66D, the maximum height: the minimum is 0.33D, of a diameter in 32nds.'
				),
				halfLow: slip('0.33 * D / 2', 'Half of 0.33D: the radius was taken for the diameter.', {
					rare: true
				})
			}
		}),
		mostHeight: step('0.66 * D', 'Maximum height', {
			asks: 'How high may the shop head be?',

			...limits,
			slips: {
				wantedForHigh: slip('0.5 * D', '0.5D is the height wanted; the maximum is 0.66D.'),
				dashForHigh: slip(
					'2 * 0.66 * D',
					'Twice 0.66D: the dash number of D counts 32nds, not 16ths.',
					{ rare: true }
				),
				otherForHigh: slip(
					'0.6 * D',
					'0.6D is wanted of D, E and M rivets; the maximum is 0.66D.',
					{ rare: true }
				),
				quarterMoreHigh: slip(
					'0.75 * D',
					'0.75D is a quarter of D over 0.5D; the maximum is 0.66D.',
					{
						rare: true
					}
				),
				measuredForHigh: slip('height', 'That is the height as measured; the maximum is 0.66D.', {
					rare: true
				}),
				leastForHigh: slip('0.33 * D', '0.33D is the minimum height; the maximum is 0.66D.'),
				shankForHigh: slip('D', 'As high as the shank is thick: the maximum is 0.66D.', {
					rare: true
				})
			}
		}),
		judgement: step(judged, 'Accept, drive more or replace', {
			asks: 'So do you accept it, drive it more or replace it?',

			rule: 'head.judged',
			tolerance: exactWords,
			kind: choice(headJudgements),
			slips: {
				widthAlone: slip(
					'width > mostWidth ? "replace" : width < leastWidth ? "drive more" : "accept"',
					'Only the width was judged; the height has limits too.'
				),
				heightAlone: slip(
					'height < leastHeight ? "replace" : height > mostHeight ? "drive more" : "accept"',
					'Only the height was judged; the width has limits too.'
				),
				accepted: slip(
					'"accept"',
					'A head is accepted only when its width and its height are both within the limits.',
					{ rare: true }
				),
				drivenMore: slip(
					`${isBeyond} or ${isShort} ? "drive more" : "accept"`,
					'Too wide or too flat, a head cannot be driven back: the rivet is replaced.'
				),
				drivenWithin: slip(
					`${isBeyond} ? "replace" : "drive more"`,
					'Within the limits it stays: more driving is only for a head too narrow or too high.',
					{ late: true }
				),
				replaced: slip(
					`${isBeyond} or ${isShort} ? "replace" : "accept"`,
					'Too narrow or too high, and just driven: it is driven more, not drilled out.'
				),
				replacedWithin: slip(
					`${isBeyond} ? "replace" : ${isShort} ? "drive more" : "replace"`,
					'Both sizes are within the limits: nothing needs drilling out.',
					{ late: true }
				)
			}
		})
	},
	outcomes: [
		outcome(
			['judgement'],
			{
				// More blows: to 1.5D across, or a tenth wider if it is that wide already.
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
					'Drilled out and replaced, the head can be {wide}D across and {tall}D high, if the hole is not damaged.'
				),
				drilledForNothing: when(
					'entered == "replace"',
					'Drilled out for nothing, and the hole may be damaged: the head is neither too wide nor too flat.'
				),
				driven: when(
					'entered == "drive more" and right.judgement == "drive more"',
					'Driven on, it spreads and flattens to about {wide}D across and {tall}D high.'
				),
				drivenForNothing: when(
					'entered == "drive more"',
					'Driven on, it spreads and flattens to about {wide}D across and {tall}D high: that mends nothing here.'
				),
				left: when(
					'right.judgement == "accept"',
					'Left as it is, {wide}D across and {tall}D high: within the limits.'
				),
				bad: otherwise('Left as it is, {wide}D across and {tall}D high: outside the limits.')
			}
		)
	]
});
