import { length, rivetLength } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { stockedSize } from '../../trade/tolerances.ts';

export const stockedLength = piece(
	'stocked-length',
	{ needed: given(length, 'Length needed') },
	step('upTo(needed, 1/16 in)', 'Next stocked length', {
		asks: 'Which stocked length do you take?',

		rule: 'length.up',
		kind: rivetLength,
		tolerance: stockedSize,
		slips: {
			notStocked: slip('needed', 'That is the length needed; take the next full 1/16 in up.'),
			down: slip(
				'downTo(needed, 1/16 in)',
				'Shorter than the length needed: take the next 1/16 in up.'
			),
			nearest: slip(
				'nearest(needed, 1/16 in)',
				'Rounded to the nearest 1/16 in: it must not be shorter than the length needed.',
				{ rare: true }
			),
			halfSize: slip(
				'upTo(needed, 1/32 in)',
				'Half sizes are made, but this asks for the next full 1/16 in.'
			),
			in32nds: slip(
				'2 * upTo(needed, 1/16 in)',
				'Twice as long: a length and its dash number count 16ths, neither 32nds nor 8ths.'
			),
			lengthOver32: slip(
				'upTo(needed, 1/16 in) / 2',
				'Half as long: a length and its dash number count 16ths, not 32nds.',
				{ rare: true, late: true }
			),
			topAsDash: slip(
				'2 * upTo(needed, 1/32 in)',
				'The top number of the length in 32nds was taken for its dash number: that counts 16ths.',
				{ rare: true }
			),
			oneMore: slip(
				'upTo(needed, 1/16 in) + (1/16 in)',
				'One size too long for that length needed: the next 1/16 in up is enough.'
			)
		}
	})
);
