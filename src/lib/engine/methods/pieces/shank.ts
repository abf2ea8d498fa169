import { rivetDiameter } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { thousandths } from '../../trade/tolerances.ts';

export const shank = piece(
	'shank',
	{ D: given(rivetDiameter, 'Rivet diameter') },
	step('1.5 * D', 'Shank for the shop head', {
		asks: 'How much shank must stand out for the shop head?',

		symbol: 'shank',
		rule: 'length.shank',
		tolerance: thousandths,
		slips: {
			halfD: slip('1.5 * D / 2', 'Half of 1.5D: the radius was taken for the diameter.', {
				rare: true
			}),
			headHigh: slip('0.5 * D', '0.5D is the height of the shop head; it takes 1.5D to form it.'),
			dashIn16ths: slip(
				'1.5 * (2 * D)',
				'3D: the dash number of D was read in 16ths, or the 1.5D for the shop head was taken twice.'
			),
			oneD: slip('D', '1D for the shop head: it takes 1.5D.'),
			twoD: slip('2 * D', '2D for the shop head: it takes 1.5D.')
		}
	})
);
