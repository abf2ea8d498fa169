import { count, length, listOf, partNumber } from '../../../src/lib/engine/quantity/kinds.ts';
import { given } from '../../../src/lib/engine/solver/given.ts';
import { method, slip, step } from '../../../src/lib/engine/solver/write.ts';
import { exactWords, thousandths, wholeNumber } from '../../../src/lib/engine/trade/tolerances.ts';
import { compiledHere } from '../solver/compile-here.ts';
import { taskOf } from './typed-answers.ts';

/**
 * A method made up to be marked: few slips, each with a number of its own but where it is said.
 * What the methods of the trade lack or gain does not move these tests.
 */
const shelf = compiledHere(
	method({
		id: 'made-up-shelf',
		title: 'Holes along a shelf',
		given: {
			D: given(length, 'Diameter'),
			width: given(length, 'Width'),
			margin: given(length, 'Margin'),
			gap: given(length, 'Greatest gap'),
			layers: given(listOf(length), 'Layers')
		},
		steps: {
			least: step('2 * D', 'Least edge', {
				tolerance: thousandths,
				slips: {
					radius: slip('D', 'Twice the radius: it is twice the diameter.'),
					three: slip('3 * D', 'Three times: it is two.'),
					threeSeldom: slip('2 * D + D', 'Two and one more.', { rare: true })
				}
			}),
			grip: step('sum(layers)', 'Grip', {
				tolerance: thousandths,
				slips: {
					oneLayer: slip('largest(layers)', 'One layer only.'),
					thinLeftOut: slip('sum(layers) - smallest(layers)', 'The thinnest is left out.')
				}
			}),
			run: step('width - 2 * margin', 'Run', {
				tolerance: thousandths,
				slips: {
					oneMargin: slip('width - margin', 'One margin only.'),
					noMargin: slip('width', 'No margin.')
				}
			}),
			spaces: step('upTo(run / gap, 1)', 'Spaces', {
				kind: count,
				tolerance: wholeNumber,
				slips: {
					down: slip('downTo(run / gap, 1)', 'Rounded down.'),
					more: slip('upTo(run / gap, 1) + 1', 'One space too many.')
				}
			}),
			count: step('spaces + 1', 'Holes', {
				kind: count,
				tolerance: wholeNumber,
				slips: { spacesForHoles: slip('spaces', 'Spaces counted as holes.') }
			}),
			pitch: step('run / spaces', 'Pitch', {
				tolerance: thousandths,
				slips: { byHoles: slip('run / (spaces + 1)', 'Divided by the holes.') }
			}),
			positions: step('stepOff(margin, pitch, count)', 'Positions', {
				tolerance: thousandths,
				slips: { fromZero: slip('stepOff(0 in, pitch, count)', 'Measured from the first hole.') }
			}),
			name: step('rivetNumber(470, "AD", 4, 5)', 'Part', {
				kind: partNumber,
				tolerance: exactWords,
				slips: { letters: slip('rivetNumber(470, "D", 4, 5)', 'D is another alloy.') }
			})
		}
	})
);

/**
 * Least edge 0.375, grip 0.113, run 9.5, 5 spaces (9.5 / 2.1 is 4.5), 6 holes, pitch 1.9, positions
 * 0.4, 2.3, 4.2, 6.1, 8, 9.9.
 */
export const shelfTask = await taskOf('LR', shelf, {
	D: 0.1875,
	width: 10.3,
	margin: 0.4,
	gap: 2.1,
	layers: [0.05, 0.063]
});
