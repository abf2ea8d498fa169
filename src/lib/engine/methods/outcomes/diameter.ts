import { hundredths } from '../../quantity/kinds.ts';
import { otherwise, outcome, shown, when } from '../../solver/write.ts';
import { stockedSize } from '../../trade/tolerances.ts';
import { inches, nearRight } from './near-right.ts';

/** What is said of a diameter beside 3T, in every method that chooses one. */
export const beside3T = {
	inRange: '{entered} is {times}T, within 2.5T to 3T; this asks for the next size above 3T.',
	under: '{entered} is only {times}T: the rivets may shear before the sheet tears.',
	over: '{entered} is {times}T: a larger hole than the joint needs.'
};

/** A diameter beside the thickest sheet, and its shank before the shop head is driven. */
export const diameterShows = (key: string) => ({
	// Rounded down, so that a hair under three times is not told as three.
	times: shown(`downTo(${key} / thickest, 0.01)`, hundredths),
	shankOut: shown(`1.5 * ${key}`)
});

/** What a rivet diameter does to a joint, in a method that has `thickest` and `diameter`. */
export const diameterInJoint = outcome(
	['diameter'],
	{
		...diameterShows('diameter'),
		size: shown('nearest(diameter, 1/32 in)')
	},
	{
		right: when(
			nearRight('diameter', stockedSize),
			'{entered} is {times}T, the smallest rivet for this joint.'
		),
		unstocked: when(
			`size <= 0 in or abs(diameter - size) > ${inches(stockedSize)}`,
			'{entered} is no rivet size.'
		),
		small: when('size < (3/32 in)', '{entered} is too small for a part that carries stress.'),
		range: when('size < right.diameter and diameter >= 2.5 * thickest', beside3T.inRange),
		under: when('size < right.diameter', beside3T.under),
		over: otherwise(beside3T.over)
	}
);
