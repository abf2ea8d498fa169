import { rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, slip, step } from '../solver/write.ts';
import { headSize } from './outcomes/head-size.ts';
import { thousandths } from '../trade/tolerances.ts';

/** Wanted shop head of A, AD, B and DD rivets. */
export const shopHead = method({
	id: 'shop-head',
	title: 'Shop head wanted',
	given: {
		D: given(rivetDiameter, 'Rivet diameter')
	},
	steps: {
		width: step('1.5 * D', 'Width of the shop head', {
			rule: 'head.wanted',
			tolerance: thousandths,
			slips: {
				notSpread: slip('D', 'As wide as the shank: a shop head spreads to 1.5 D.'),
				leastWidth: slip('1.25 * D', '1.25 D is the least width allowed; 1.5 D is wanted.'),
				mostWidth: slip('1.66 * D', '1.66 D is the most width allowed; 1.5 D is wanted.'),
				universalWidth: slip(
					'2 * D',
					'2 D is the width of the manufactured head; the shop head is 1.5 D.'
				),
				halfWidth: slip('1.5 * D / 2', 'Half of 1.5 D: the radius was taken for the diameter.')
			}
		}),
		height: step('0.5 * D', 'Height of the shop head', {
			rule: 'head.wanted',
			tolerance: thousandths,
			slips: {
				leastHeight: slip('0.33 * D', '0.33 D is the least height allowed; 0.5 D is wanted.'),
				mostHeight: slip('0.66 * D', '0.66 D is the most height allowed; 0.5 D is wanted.'),
				universalHeight: slip(
					'0.425 * D',
					'0.425 D is the height of the manufactured head; the shop head is 0.5 D high.'
				),
				halfHeight: slip('0.5 * D / 2', 'Half of 0.5 D: the radius was taken for the diameter.'),
				shankHeight: slip(
					'1.5 * D',
					'1.5 D is the shank before driving; driven, the head is 0.5 D high.'
				)
			}
		})
	},
	outcomes: [
		headSize({ key: 'width', least: 1.25, wanted: 1.5, most: 1.66, lies: 'across' }),
		headSize({ key: 'height', least: 0.33, wanted: 0.5, most: 0.66, lies: 'high' })
	]
});
