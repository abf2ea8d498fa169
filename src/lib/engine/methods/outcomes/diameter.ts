import { otherwise, outcome, shown, when } from '../../solver/write.ts';
import { stockedSize } from '../../trade/tolerances.ts';

/** What a rivet diameter does to a joint, in a method that has `thickest` and `diameter`. */
export const diameterInJoint = outcome(
	['diameter'],
	{
		times: shown('diameter / thickest', 'hundredth'),
		size: shown('nearest(diameter, 1/32 in)'),
		shankOut: shown('1.5 * diameter')
	},
	{
		right: when(
			`abs(diameter - right.diameter) <= (${stockedSize.amount} in)`,
			'{entered} is {times} times the thickest sheet, the smallest rivet for this joint.'
		),
		unstocked: when(
			`diameter < (1/64 in) or abs(diameter - size) > (${stockedSize.amount} in)`,
			'{entered} is no rivet size.'
		),
		small: when('diameter < (3/32 in)', '{entered} is too small for a part that carries stress.'),
		shears: when(
			'diameter < 2.5 * thickest',
			'{entered} is only {times} times the thickest sheet: the rivets may shear before the sheet tears.'
		),
		under: when(
			'diameter < right.diameter',
			'{entered} is only {times} times the thickest sheet, less than the rule asks for.'
		),
		over: otherwise(
			'{entered} is {times} times the thickest sheet: a larger hole than the joint needs.'
		)
	}
);
