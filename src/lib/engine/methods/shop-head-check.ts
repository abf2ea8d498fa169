import { length, method, slip, step } from '../solver/method.ts';
import { headJudgements } from '../trade/shop-head.ts';
import { exactWords, thousandths } from '../trade/tolerances.ts';

const limits = { rule: 'head.limits', tolerance: thousandths };

/** Accept or rework by the limits for A, AD, B and DD rivets. */
export const shopHeadCheck = method({
	id: 'shop-head-check',
	title: 'Shop head accepted or not',
	given: {
		D: length('Rivet diameter', { style: 'rivet-diameter' }),
		width: length('Measured width'),
		height: length('Measured height')
	},
	steps: {
		leastWidth: step('1.25 * D', 'Least width', limits),
		mostWidth: step('1.66 * D', 'Most width', limits),
		leastHeight: step('0.33 * D', 'Least height', limits),
		mostHeight: step('0.66 * D', 'Most height', limits),
		judgement: step(
			'judgedHead(width, leastWidth, mostWidth, height, leastHeight, mostHeight)',
			'Accept, drive more or replace',
			{ rule: 'head.judged', tolerance: exactWords, oneOf: headJudgements }
		)
	},
	slips: {
		// First what was judged wrongly: with one word as the answer, limits only come second.
		widthAlone: slip(
			'judgement',
			'judgedHead(width, leastWidth, mostWidth, 0.5 * D, leastHeight, mostHeight)',
			'The width alone was judged; the height must be within its limits too.'
		),
		heightAlone: slip(
			'judgement',
			'judgedHead(1.5 * D, leastWidth, mostWidth, height, leastHeight, mostHeight)',
			'The height alone was judged; the width must be within its limits too.'
		),
		accepted: slip(
			'judgement',
			'"accept"',
			'A head is accepted only when its width and its height are both within the limits.'
		),
		drivenMore: slip(
			'judgement',
			'"drive more"',
			'Driving on makes a head wider and flatter; that helps only one that is too narrow or too high.'
		),
		replaced: slip(
			'judgement',
			'"replace"',
			'A rivet is drilled out only when its head is too wide or too flat; more driving cannot mend that.'
		),
		shankForLeast: slip('leastWidth', 'D', 'As wide as the shank: the least is 1.25 D.'),
		wantedForLeast: slip(
			'leastWidth',
			'1.5 * D',
			'1.5 D is the width wanted; down to 1.25 D is allowed.'
		),
		halfLeastWidth: slip(
			'leastWidth',
			'1.25 * D / 2',
			'Half of 1.25 D: the radius was taken for the diameter.'
		),
		wantedForMost: slip(
			'mostWidth',
			'1.5 * D',
			'1.5 D is the width wanted; up to 1.66 D is allowed.'
		),
		universalForMost: slip(
			'mostWidth',
			'2 * D',
			'2 D is the width of the manufactured head; a shop head may have 1.66 D.'
		),
		halfMostWidth: slip(
			'mostWidth',
			'1.66 * D / 2',
			'Half of 1.66 D: the radius was taken for the diameter.'
		),
		wantedForLow: slip(
			'leastHeight',
			'0.5 * D',
			'0.5 D is the height wanted; down to 0.33 D is allowed.'
		),
		mostForLow: slip('leastHeight', '0.66 * D', '0.66 D is the most height; the least is 0.33 D.'),
		halfLow: slip(
			'leastHeight',
			'0.33 * D / 2',
			'Half of 0.33 D: the radius was taken for the diameter.'
		),
		wantedForHigh: slip(
			'mostHeight',
			'0.5 * D',
			'0.5 D is the height wanted; up to 0.66 D is allowed.'
		),
		leastForHigh: slip('mostHeight', '0.33 * D', '0.33 D is the least height; the most is 0.66 D.'),
		shankForHigh: slip('mostHeight', 'D', 'As high as the shank is thick: the most is 0.66 D.')
	}
});
