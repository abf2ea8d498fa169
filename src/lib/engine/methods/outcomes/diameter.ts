import { hundredths } from '../../quantity/kinds.ts';
import { otherwise, outcome, shown, when } from '../../solver/write.ts';
import { stockedSize } from '../../trade/tolerances.ts';
import { nearRight } from './near-right.ts';

/** What a rivet diameter does to a joint, in a method that has `thickest` and `diameter`. */
export const diameterInJoint = outcome(
	['diameter'],
	{
		// Rounded down, so that a hair under three times is not told as three.
		times: shown('downTo(diameter / thickest, 0.01)', hundredths),
		size: shown('nearest(diameter, 1/32 in)'),
		shankOut: shown('1.5 * diameter')
	},
	{
		right: when(
			nearRight('diameter', stockedSize),
			'{entered} is {times} times the thickest sheet, the smallest rivet for this joint.'
		),
		unstocked: when(
			`size <= 0 in or abs(diameter - size) > (${stockedSize.amount} in)`,
			'{entered} is no rivet size.'
		),
		small: when('size < (3/32 in)', '{entered} is too small for a part that carries stress.'),
		under: when(
			'size < right.diameter',
			'{entered} is only {times} times the thickest sheet: the rivets may shear before it tears.'
		),
		over: otherwise(
			'{entered} is {times} times the thickest sheet: a larger hole than the joint needs.'
		)
	}
);
