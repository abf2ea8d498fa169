import { length, rivetLength } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { stockedSize } from '../../trade/tolerances.ts';

export const stockedLength = piece(
	'stocked-length',
	{ needed: given(length, 'Length needed') },
	step('upTo(needed, 1/16 in)', 'Next stocked length', {
		rule: 'length.up',
		kind: rivetLength,
		tolerance: stockedSize,
		slips: {
			notStocked: slip('needed', 'No rivet has this length: take the next 16th up.'),
			down: slip('downTo(needed, 1/16 in)', 'Rounded down: the shank comes up short.'),
			halfSize: slip(
				'upTo(needed, 1/32 in)',
				'Rounded up to a 32nd: lengths step by 1/16 in, diameters by 1/32 in.'
			),
			oneMore: slip(
				'upTo(needed, 1/16 in) + (1/16 in)',
				'One size longer than the next one up: too much shank bends over.'
			)
		}
	})
);
