import { fraction, length } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { layoutLine } from '../../trade/tolerances.ts';

/** A flat: the leg to its mold line, less the setbacks at its bent ends. */
export const flat = piece(
	'flat',
	{
		leg: given(fraction, 'Leg, to the mold line'),
		taken: given(length, 'Setbacks taken from the leg')
	},
	step('leg - taken', 'Flat', {
		asks: 'How long is the flat between the bends?',
		symbol: 'flat',
		rule: 'bend.flat',
		tolerance: layoutLine,
		slips: {
			moldLines: slip(
				'leg',
				'No setback taken off: a flat ends at the bend tangent line, a setback short of the mold line.'
			),
			added: slip(
				'leg + taken',
				'Setback added: the tangent line lies a setback short of the mold line.'
			),
			inside: slip(
				'leg - T',
				'T taken off the leg: a flat ends at the bend tangent line, a setback from the mold line.'
			),
			lessRadius: slip(
				'leg - taken - R',
				'R taken off after the setback: the setback has R in it.',
				{ rare: true }
			)
		}
	}),
	{ T: given(length, 'Thickness'), R: given(fraction, 'Inside bend radius') }
);
