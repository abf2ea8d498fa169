import { length, method, slip, step } from '../solver/method.ts';
import { thousandths } from '../trade/tolerances.ts';

/** Wanted shop head of A, AD, B and DD rivets. */
export const shopHead = method({
	id: 'shop-head',
	title: 'Shop head wanted',
	given: {
		D: length('Rivet diameter', { style: 'rivet-diameter' })
	},
	steps: {
		width: step('1.5 * D', 'Width of the shop head', {
			rule: 'head.wanted',
			tolerance: thousandths
		}),
		height: step('0.5 * D', 'Height of the shop head', {
			rule: 'head.wanted',
			tolerance: thousandths
		})
	},
	slips: {
		notSpread: slip('width', 'D', 'As wide as the shank: a shop head spreads to 1.5 D.'),
		leastWidth: slip('width', '1.25 * D', '1.25 D is the least width allowed; 1.5 D is wanted.'),
		mostWidth: slip('width', '1.66 * D', '1.66 D is the most width allowed; 1.5 D is wanted.'),
		universalWidth: slip(
			'width',
			'2 * D',
			'2 D is the width of the manufactured head; the shop head is 1.5 D.'
		),
		halfWidth: slip(
			'width',
			'1.5 * D / 2',
			'Half of 1.5 D: the radius was taken for the diameter.'
		),
		leastHeight: slip('height', '0.33 * D', '0.33 D is the least height allowed; 0.5 D is wanted.'),
		mostHeight: slip('height', '0.66 * D', '0.66 D is the most height allowed; 0.5 D is wanted.'),
		universalHeight: slip(
			'height',
			'0.425 * D',
			'0.425 D is the height of the manufactured head; the shop head is 0.5 D high.'
		),
		halfHeight: slip(
			'height',
			'0.5 * D / 2',
			'Half of 0.5 D: the radius was taken for the diameter.'
		),
		shankHeight: slip(
			'height',
			'1.5 * D',
			'1.5 D is the shank before driving; driven, the head is 0.5 D high.'
		)
	}
});
