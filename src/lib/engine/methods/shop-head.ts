import { rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, slip, step } from '../solver/write.ts';
import { headSize } from './outcomes/head-size.ts';
import { onMetricScale } from '../trade/tolerances.ts';

/** Wanted shop head of A, AD, B and DD rivets. */
export const shopHead = method({
	id: 'shop-head',
	title: 'Shop head wanted',
	given: {
		D: given(rivetDiameter, 'Rivet diameter')
	},
	steps: {
		width: step('1.5 * D', 'Width of the shop head', {
			asks: 'How wide should the shop head be?',

			rule: 'head.wanted',
			tolerance: onMetricScale,
			slips: {
				notSpread: slip('D', 'As wide as the shank: a shop head spreads to 1.5D.'),
				otherWidth: slip('1.4 * D', '1.4D is for D, E and M rivets; this one takes 1.5D.'),
				leastWidth: slip('1.25 * D', '1.25D is the minimum width; 1.5D is wanted.'),
				mostWidth: slip('1.66 * D', '1.66D is the maximum width; 1.5D is wanted.'),
				universalWidth: slip(
					'2 * D',
					'2D is the width of the manufactured head; the shop head is 1.5D.'
				),
				halfWidth: slip('1.5 * D / 2', 'Half of 1.5D: the radius was taken for the diameter.'),
				doubleWidth: slip(
					'3 * D',
					'3D is twice the width: that is 1.5D, with D counted in 32nds.',
					{ rare: true }
				),
				minimum13: slip('1.3 * D', '1.3D is hardly over the minimum; 1.5D is wanted.', {
					rare: true
				}),
				quarterMore: slip('1.75 * D', '1.75D is over the maximum of 1.66D; 1.5D is wanted.', {
					rare: true
				}),
				nextRivet: slip(
					'1.5 * (D + (1/32 in))',
					'That is for a rivet 1/32 in larger; take 1.5 times this one.',
					{ rare: true }
				)
			}
		}),
		height: step('0.5 * D', 'Height of the shop head', {
			asks: 'How high should the shop head be?',

			rule: 'head.wanted',
			tolerance: onMetricScale,
			slips: {
				otherHeight: slip('0.6 * D', '0.6D is for D, E and M rivets; this one takes 0.5D.'),
				leastHeight: slip('0.33 * D', '0.33D is the minimum height; 0.5D is wanted.'),
				mostHeight: slip('0.66 * D', '0.66D is the maximum height; 0.5D is wanted.'),
				universalHeight: slip(
					'0.425 * D',
					'0.425D is the height of the manufactured head; the shop head is 0.5D high.'
				),
				halfHeight: slip('0.5 * D / 2', 'Half of 0.5D: the radius was taken for the diameter.'),
				shankThick: slip('D', 'That is D; the head is 0.5D high, and a dash number counts 32nds.'),
				halfOfWidth: slip('width / 2', 'Half of the width: the height is 0.5D, a third of it.'),
				third: slip('D / 3', 'A third of D is about the minimum, 0.33D; 0.5D is wanted.', {
					rare: true
				}),
				minimum03: slip('0.3 * D', '0.3D is under the minimum of 0.33D; 0.5D is wanted.', {
					rare: true
				}),
				shankHeight: slip(
					'1.5 * D',
					'1.5D is the width of the head, and what stands out before driving; the head is 0.5D high.'
				)
			}
		})
	},
	outcomes: [
		headSize({ key: 'width', least: 1.25, wanted: 1.5, most: 1.66, lies: 'across' }),
		headSize({ key: 'height', least: 0.33, wanted: 0.5, most: 0.66, lies: 'high' })
	]
});
