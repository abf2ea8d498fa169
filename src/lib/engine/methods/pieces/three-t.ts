import { length } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { thousandths } from '../../trade/tolerances.ts';

export const threeT = piece(
	'three-t',
	{ thickest: given(length, 'Thickest sheet', { symbol: 'T' }) },
	step('3 * thickest', '3T: three times the thickest sheet', {
		asks: 'What is three times the thickest sheet?',

		symbol: '3T',
		rule: 'diameter.three-t',
		tolerance: thousandths,
		slips: {
			oneT: slip('thickest', 'That is T itself: multiply by 3.', { rare: true }),
			twoT: slip('2 * thickest', '2T: the rule is 3T.'),
			twoAndHalfT: slip(
				'2.5 * thickest',
				'2.5T is the low end of the handbook’s range; this asks for 3T.',
				{ rare: true }
			),
			fourT: slip('4 * thickest', '4T: the rule is 3T.', { rare: true }),
			bothSheets: slip(
				'6 * thickest',
				'6T: the sheet was counted twice; the thickest one alone decides, times 3.'
			)
		}
	})
);
