import { rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, slip, step } from '../solver/write.ts';
import { thousandths } from '../trade/tolerances.ts';
import { headSize } from './outcomes/head-size.ts';

/** Wanted shop head of D, E and M rivets, which spread less than those of the other alloys. */
export const shopHeadD = method({
	id: 'shop-head-d',
	title: 'Shop head wanted of a D rivet',
	given: {
		D: given(rivetDiameter, 'Rivet diameter')
	},
	steps: {
		width: step('1.4 * D', 'Width of the shop head', {
			asks: 'How wide should the shop head be?',

			rule: 'head.wanted',
			tolerance: thousandths,
			slips: {
				notSpread: slip('D', 'As wide as the shank: the shop head of a D rivet spreads to 1.4D.'),
				otherWidth: slip(
					'1.5 * D',
					'1.5D is for A, AD, B and DD rivets, and the maximum of a D rivet; 1.4D is wanted.'
				),
				leastWidth: slip('1.25 * D', '1.25D is the minimum width; 1.4D is wanted.'),
				mostOfOthers: slip('1.66 * D', '1.66D is the maximum of other rivets; 1.4D is wanted.', {
					rare: true
				}),
				universalWidth: slip(
					'2 * D',
					'2D is the width of the manufactured head; the shop head is 1.4D.'
				),
				halfWidth: slip('1.4 * D / 2', 'Half of 1.4D: the radius was taken for the diameter.')
			}
		}),
		height: step('0.6 * D', 'Height of the shop head', {
			asks: 'How high should the shop head be?',

			rule: 'head.wanted',
			tolerance: thousandths,
			slips: {
				otherHeight: slip(
					'0.5 * D',
					'0.5D is for A, AD, B and DD rivets, and the minimum of a D rivet; 0.6D is wanted.'
				),
				mostHeight: slip('0.66 * D', '0.66D is the maximum height; 0.6D is wanted.'),
				leastOfOthers: slip('0.33 * D', '0.33D is the minimum of other rivets; 0.6D is wanted.', {
					rare: true
				}),
				universalHeight: slip(
					'0.425 * D',
					'0.425D is the height of the manufactured head; the shop head is 0.6D high.'
				),
				halfHeight: slip('0.6 * D / 2', 'Half of 0.6D: the radius was taken for the diameter.'),
				halfOfWidth: slip('width / 2', 'Half of the width: the height is 0.6D.', { rare: true }),
				shankHeight: slip(
					'1.5 * D',
					'1.5D is what stands out before driving; driven, the head is 0.6D high.'
				)
			}
		})
	},
	outcomes: [
		headSize({ key: 'width', least: 1.25, wanted: 1.4, most: 1.5, lies: 'across' }),
		headSize({ key: 'height', least: 0.5, wanted: 0.6, most: 0.66, lies: 'high' })
	]
});
