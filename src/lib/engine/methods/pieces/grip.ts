import { length, listOf, rivetDiameter } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { thousandths } from '../../trade/tolerances.ts';

export const grip = piece(
	'grip',
	{ layers: given(listOf(length), 'Layers') },
	step('sum(layers)', 'Grip: every layer the rivet passes through', {
		symbol: 'grip',
		rule: 'length.grip',
		tolerance: thousandths,
		slips: {
			oneLayer: slip('largest(layers)', 'One layer only: the rivet passes through all of them.'),
			thinLeftOut: slip(
				'sum(layers) - smallest(layers)',
				'The thinnest layer is left out of the grip.'
			),
			thickLeftOut: slip(
				'sum(layers) - largest(layers)',
				'The thickest layer is left out of the grip.'
			),
			headToo: slip(
				'sum(layers) + 0.425 * D',
				'The manufactured head was added: the grip is the layers alone.'
			)
		}
	}),
	{ D: given(rivetDiameter, 'Rivet diameter') }
);
