import { count, length, listOf, number } from '../../../src/lib/engine/quantity/kinds.ts';
import { given } from '../../../src/lib/engine/solver/given.ts';
import { method, slip, step } from '../../../src/lib/engine/solver/write.ts';
import { thousandths, wholeNumber } from '../../../src/lib/engine/trade/tolerances.ts';
import { compiledHere } from '../solver/compile-here.ts';
import { taskOf } from './typed-answers.ts';

/**
 * A method made up for factors and for slips that come to the same: rules of so many times a size,
 * and steps that only look like one.
 */
const strip = compiledHere(
	method({
		id: 'made-up-strip',
		title: 'Holes along a strip',
		given: {
			layers: given(listOf(length), 'Layers'),
			D: given(length, 'Diameter'),
			width: given(length, 'Strip width'),
			gap: given(length, 'Gap'),
			six: given(length, 'Pitch')
		},
		steps: {
			thickest: step('largest(layers)', 'Thickest layer', { tolerance: thousandths }),
			threeT: step('3 * thickest', 'Three thicknesses', {
				tolerance: thousandths,
				slips: { seven: slip('7 * thickest', 'Seven times.') }
			}),
			half: step('1.4 * D', 'Seven fifths of D', { tolerance: thousandths }),
			fine: step('1.2345 * D', 'Fine', { tolerance: thousandths }),
			twenty: step('20 * D', 'Twenty', { tolerance: thousandths }),
			more: step('21 * D', 'Twenty-one', { tolerance: thousandths }),
			alike: step('width * 1.25', 'Five quarters of the width', { tolerance: thousandths }),
			// 0.5 + 1 is three times 0.5, by these numbers only.
			sum: step('width + D', 'Sum', { tolerance: thousandths }),
			nothing: step('width - 2 * D', 'What is left', { tolerance: thousandths }),
			sixT: step('6 * thickest', 'Six thicknesses', { tolerance: thousandths }),
			spaces: step('upTo(width / gap, 1)', 'Spaces', {
				kind: count,
				tolerance: wholeNumber,
				slips: {
					down: slip('downTo(width / gap, 1)', 'Rounded down.'),
					lessOne: slip('upTo(width / gap, 1) - 1', 'One less.')
				}
			}),
			row: step('stepOff(gap, width / spaces, spaces)', 'Row', { tolerance: thousandths }),
			along: step('spaces * thickest', 'Layers along', { tolerance: thousandths }),
			run: step('spaces * gap', 'Run', { tolerance: thousandths }),
			share: step('D / width', 'Share', { kind: number, tolerance: thousandths }),
			twice: step('3 * share', 'Three shares', { kind: number, tolerance: thousandths }),
			one: step('width * 0.7', 'Seven tenths', { tolerance: thousandths }),
			two: step('width * 0.9', 'Nine tenths', { tolerance: thousandths }),
			three: step('width * 0.7', 'Seven tenths again', { tolerance: thousandths }),
			next: step('width * 0.6', 'Six tenths', { tolerance: thousandths }),
			last: step('width * 0.7', 'Seven tenths at last', { tolerance: thousandths }),
			rough: step('width * 0.3', 'Rough', {
				tolerance: thousandths,
				slips: {
					ofWidth: slip('width * 0.3125', 'Of the width.'),
					ofD: slip('D * 0.625', 'Of the diameter.'),
					ofPitch: slip('six * 5 / 96', 'Of the pitch.')
				}
			}),
			few: step('width * 0.17', 'Few', {
				tolerance: thousandths,
				slips: {
					fewOfWidth: slip('width * 0.1875', 'Of the width.'),
					fewOfD: slip('D * 0.375', 'Of the diameter.')
				}
			}),
			left: step('sum(layers)', 'Stack', {
				tolerance: thousandths,
				slips: {
					seldom: slip('smallest(layers)', 'The smallest alone.', { rare: true }),
					// One act with two layers alike; with unlike ones, two numbers.
					oneLeftOut: slip('sum(layers) - smallest(layers)', 'One layer left out.'),
					largestAlone: slip('largest(layers)', 'The largest alone.'),
					// The same number by these givens only.
					byWidth: slip('0.05 * width', 'By the width.')
				}
			})
		}
	})
);

/**
 * Thickest 0.05, 3T 0.15, diameter 0.5, width 1, gap 0.3: four spaces. Both layers are alike.
 */
export const stripTask = await taskOf('LR', strip, {
	layers: [0.05, 0.05],
	D: 0.5,
	width: 1,
	gap: 0.3,
	six: 6
});

/** The same, asking for the run alone. */
export const runTask = { ...stripTask, drawn: { ...stripTask.drawn, asked: ['run'] } };
