import { length, listOf, rivetDiameter } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { thousandths } from '../../trade/tolerances.ts';

export const grip = piece(
	'grip',
	{ layers: given(listOf(length), 'Layers') },
	step('sum(layers)', 'Grip: everything the rivet passes through', {
		asks: 'How thick is everything the rivet passes through?',

		symbol: 'grip',
		rule: 'length.grip',
		tolerance: thousandths,
		slips: {
			oneLayer: slip('largest(layers)', 'One layer only: the rivet passes through all of them.'),
			firstLayer: slip(
				'member(layers, 1)',
				'The layer under the manufactured head only: the rivet passes through all of them.',
				{ rare: true }
			),
			middleLeftOut: slip(
				'howMany(layers) > 2 ? sum(layers) - member(layers, 2) : sum(layers)',
				'The middle layer, or one as thick, is left out: every layer is part of the grip.'
			),
			thinLeftOut: slip(
				'sum(layers) - smallest(layers)',
				'The thinnest layer is left out of the grip.'
			),
			thickLeftOut: slip(
				'sum(layers) - largest(layers)',
				'The thickest layer is left out of the grip.',
				{ rare: true }
			),
			lastLeftOut: slip(
				'sum(layers) - member(layers, howMany(layers))',
				'The layer at the shop head is left out of the grip.',
				{ rare: true }
			),
			thickestForAll: slip(
				'howMany(layers) * largest(layers)',
				'The thickest layer was counted for every layer; add them up as they are.',
				{ rare: true }
			),
			twoAsOne: slip(
				'howMany(layers) * smallest(layers)',
				'The thinnest layer was counted for every layer; add them up as they are.',
				{ rare: true, late: true }
			),
			headToo: slip(
				'sum(layers) + 0.425 * D',
				'The manufactured head was added: the grip is the layers alone.',
				{ rare: true }
			)
		}
	}),
	{ D: given(rivetDiameter, 'Rivet diameter') }
);
