import { diameterDash as dashNumber, partNumber } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { exactNumber } from '../../trade/tolerances.ts';

/** The number for the diameter in a rivet number such as `MS20470AD4-5`. */
export const diameterDash = piece(
	'diameter-dash',
	{ number: given(partNumber, 'Rivet number') },
	step('dashAfterLetters(number)', 'Number for the diameter', {
		asks: 'Which number of the rivet stands for its diameter?',

		rule: 'number.code',
		kind: dashNumber,
		tolerance: exactNumber,
		slips: {
			lastForDiameter: slip(
				'dashAtEnd(number)',
				'The number after the dash is the length; the diameter stands before it.',
				{ act: 'exchanged' }
			)
		}
	})
);
