import { count, fraction, partNumber } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { stockedSize } from '../../trade/tolerances.ts';

/** The diameter that the number for it stands for. */
export const dashDiameter = piece(
	'dash-diameter',
	{ diameterDash: given(count, 'Number for the diameter') },
	step('diameterDash * (1/32 in)', 'Rivet diameter', {
		asks: 'So which rivet diameter is it?',

		rule: 'number.code',
		kind: fraction,
		tolerance: stockedSize,
		slips: {
			diameterIn16ths: slip(
				'diameterDash * (1/16 in)',
				'The diameter was read in 16ths; it goes by 32nds, only the length by 16ths.'
			),
			diameterIn64ths: slip(
				'diameterDash * (1/64 in)',
				'Half of the diameter: write its dash number over 32.',
				{ rare: true }
			),
			diameterInMm: slip(
				'diameterDash * (1 in) / 25.4',
				'The number was read as millimetres; the diameter goes by 32nds of an inch.'
			),
			diameterIn8ths: slip(
				'diameterDash * (1/8 in)',
				'The diameter was read in 8ths; it goes by 32nds.',
				{ rare: true }
			),
			lengthForSize: slip(
				'dashAtEnd(number) * (1/16 in)',
				'That is the length of the rivet: its diameter stands before the dash, in 32nds.',
				{ late: true }
			),
			diameterOneUnder: slip(
				'(diameterDash - 1) * (1/32 in)',
				'One size too small: count the 32nds once more.',
				{ rare: true, late: true }
			),
			diameterInTenths: slip(
				'diameterDash * (0.1 in)',
				'The number was read as tenths of an inch; the diameter goes by 32nds.',
				{ rare: true }
			),
			lengthDashForSize: slip(
				'dashAtEnd(number) * (1/32 in)',
				'That is worked from the dash number of the length: the diameter stands before it.',
				{ rare: true, late: true }
			),
			diameterOneOver: slip(
				'(diameterDash + 1) * (1/32 in)',
				'One size too large: count the 32nds once more.',
				{ rare: true, late: true }
			)
		}
	}),
	{ number: given(partNumber, 'Rivet number') }
);
