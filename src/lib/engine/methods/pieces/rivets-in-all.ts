import { count } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { wholeNumber } from '../../trade/tolerances.ts';

export const rivetsInAll = piece(
	'rivets-in-all',
	{ rows: given(count, 'Rows'), count: given(count, 'Rivets in each row') },
	step('rows * count', 'Rivets for all rows', {
		asks: 'How many rivets do all rows take?',
		rule: 'panel.rivets',
		kind: count,
		tolerance: wholeNumber,
		slips: {
			oneRow: slip('count', 'The rivets of one row only: every row takes as many.'),
			added: slip('rows + count', 'Rows and rivets were added: every row takes its own rivets.'),
			oneRowLess: slip('(rows - 1) * count', 'One row too few: count the rows once more.', {
				rare: true
			}),
			oneRowMore: slip('(rows + 1) * count', 'One row too many: count the rows of the panel.', {
				rare: true
			}),
			oneRivetMore: slip(
				'rows * (count + 1)',
				'One rivet too many in each row: count the rivets, not the spaces.',
				{ late: true }
			),
			twoRows: slip(
				'rows / 2 * count',
				'Two rows were counted for one: every row takes its own rivets.',
				{
					rare: true,
					late: true
				}
			),
			twice: slip(
				'2 * rows * count',
				'Twice as many: a rivet holds all of the stack, so each hole takes one.',
				{ rare: true }
			)
		}
	})
);
