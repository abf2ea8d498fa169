import { length } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { thousandths } from '../../trade/tolerances.ts';

export const threeT = piece(
	'three-t',
	{ thickest: given(length, 'Thickest sheet') },
	step('3 * thickest', 'Three times the thickest sheet', {
		rule: 'diameter.three-t',
		tolerance: thousandths,
		slips: {
			oneT: slip('thickest', 'One thickness only: the rivet is three times the thickest sheet.'),
			twoT: slip('2 * thickest', 'Twice the thickness: the rule is three times.'),
			fourT: slip('4 * thickest', 'Four times the thickness: the rule is three times.')
		}
	})
);
