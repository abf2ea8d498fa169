import { count, fraction } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { atLeast, method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { layoutLine, steppedOff, wholeNumber } from '../trade/tolerances.ts';
import { inches, nearRight } from './outcomes/near-right.ts';

const line = inches(layoutLine);

export const rivetRow = method({
	id: 'rivet-row',
	title: 'A row of rivets between its end margins',
	given: {
		length: given(fraction, 'Length of the piece'),
		endMargin: given(fraction, 'End margin, each end'),
		greatestPitch: given(fraction, 'Maximum pitch')
	},
	steps: {
		run: step('length - 2 * endMargin', 'Run from the first hole to the last', {
			asks: 'How far is it from the first hole to the last?',

			rule: 'row.ends',
			tolerance: layoutLine,
			slips: {
				oneMargin: slip(
					'length - endMargin',
					'Only one end margin taken off: the row has one at each end.'
				),
				marginsAdded: slip(
					'length + 2 * endMargin',
					'The end margins were added: the run is the length less one at each end.',
					{ rare: true }
				),
				fourMargins: slip(
					'length - 4 * endMargin',
					'Twice the end margins taken off: each end takes one.',
					{ rare: true }
				),
				noMargin: slip(
					'length',
					'The end margins were not taken off: the end holes would lie on the edges.'
				)
			}
		}),
		spaces: step('upTo(run / greatestPitch, 1)', 'Spaces', {
			asks: 'Into how many spaces is the run divided?',

			rule: 'row.spaces',
			kind: count,
			tolerance: wholeNumber,
			slips: {
				spacesDown: slip(
					'downTo(run / greatestPitch, 1)',
					'One space too few: round up, so that the pitch is not over the maximum.',
					{ rare: true }
				),
				oneSpaceMore: slip(
					'upTo(run / greatestPitch, 1) + 1',
					'One space too many: the 1 is added for the rivets, not for the spaces.',
					{ rare: true }
				),
				lengthForSpaces: slip(
					'upTo(length / greatestPitch, 1)',
					'The spaces were counted over the whole length: they divide the run between the end margins.',
					{ rare: true, late: true }
				),
				byMargin: slip(
					'upTo(run / endMargin, 1)',
					'The run was divided by the end margin: divide it by the maximum pitch.',
					{ rare: true }
				)
			}
		}),
		count: step('spaces + 1', 'Rivets', {
			asks: 'How many rivets is that?',

			rule: 'row.spaces',
			kind: count,
			tolerance: wholeNumber,
			slips: {
				spacesForRivets: slip(
					'spaces',
					'One rivet too few: a row has one rivet more than it has spaces.'
				),
				oneRivetMore: slip(
					'spaces + 2',
					'One rivet too many: a row has one rivet more than it has spaces, not one more at each end.',
					{ rare: true }
				),
				oneRivetLess: slip(
					'spaces - 1',
					'Two rivets too few: a row has one rivet more than it has spaces.'
				)
			}
		}),
		pitch: step('run / spaces', 'Pitch', {
			asks: 'How far apart do the rivets stand, centre to centre?',

			rule: 'row.spaces',
			tolerance: steppedOff,
			slips: {
				pitchNotDivided: slip(
					'greatestPitch',
					'That is the maximum pitch: divide the run by the spaces, or the last hole misses its margin.'
				),
				byRivets: slip(
					'run / (spaces + 1)',
					'Divided by the rivets: the run is divided by its spaces.'
				),
				bySpacesLessOne: slip(
					'run / max(spaces - 1, 1)',
					'Divided by one space too few: a row has one space less than it has rivets, not two.',
					{ rare: true }
				),
				lengthByRivets: slip(
					'length / (spaces + 1)',
					'The whole length was divided by the rivets: the run between the end holes is divided by its spaces.'
				),
				oneMarginDivided: slip(
					'(length - endMargin) / spaces',
					'Only one end margin taken off before dividing: the row has one at each end.',
					{ rare: true }
				),
				marginForPitch: slip(
					'endMargin',
					'That is the end margin: the pitch is the run divided by its spaces.',
					{ rare: true }
				),
				wholeLength: slip(
					'length / spaces',
					'The whole length was divided: the pitch runs between the end holes only.'
				),
				pitchToSixteenths: slip(
					'nearest(run / spaces, 1/16 in)',
					'The pitch was rounded to 1/16 in: the error adds up and the last hole misses its mark.'
				)
			}
		}),
		positions: step('stepOff(endMargin, pitch, count)', 'Hole positions from the reference edge', {
			asks: 'Where do the holes go, from the reference edge?',

			rule: 'row.ends',
			tolerance: layoutLine,
			slips: {
				firstOnEdge: slip(
					'stepOff(0 in, pitch, count)',
					'Measured from the first hole: positions count from the edge, the first is the end margin.'
				),
				marginOnce: slip(
					'max(endMargin, stepOff(0 in, pitch, count))',
					'The end margin was counted for the first hole only: every hole stands that much farther from the edge.',
					{ rare: true }
				),
				marginTwice: slip(
					'max(endMargin, stepOff(2 * endMargin - pitch, pitch, count))',
					'The end margin was stepped off twice: from the first hole on, every step is a pitch.',
					{ rare: true }
				),
				marginAndPitch: slip(
					'stepOff(endMargin + pitch, pitch, count)',
					'The first hole was put a pitch too far: it stands an end margin from the edge.',
					{ late: true }
				),
				firstAtPitch: slip(
					'stepOff(pitch, pitch, count)',
					'The first hole stands a pitch from the edge: it stands one end margin from it.'
				)
			}
		})
	},
	limits: [
		atLeast(
			'run',
			'0 in',
			'The end margins take up the whole piece: make the margin smaller or the piece longer.',
			{ what: 'Run between the end holes', rule: 'row.ends' }
		)
	],
	outcomes: [
		outcome(
			['spaces', 'count'],
			{
				// One rivet has no space to divide by; it is told as no row.
				even: shown('run / max(count - 1, 1)'),
				holes: shown('stepOff(endMargin, even, count)')
			},
			{
				noRow: when(
					'count < 2 or count != downTo(count, 1)',
					'A row takes two rivets or more, in whole numbers.'
				),
				wide: when(
					'even > greatestPitch',
					'{count} rivets stand {even} apart, wider than the maximum pitch, {greatestPitch}.'
				),
				more: when(
					'count > right.count',
					'{count} rivets stand {even} apart: fewer still keep within the maximum pitch.'
				),
				right: otherwise(
					'{count} rivets stand {even} apart: the fewest that keep within the maximum pitch.'
				)
			}
		),
		outcome(
			['pitch'],
			{
				stepped: shown('stepOff(endMargin, pitch, count)'),
				left: shown('length - largest(stepped)')
			},
			{
				noStep: when('pitch <= 0 in', 'A pitch of {pitch} makes no row.'),
				right: when(
					nearRight('pitch', steppedOff),
					'Stepped off at {pitch}, the last hole stands {left} from the far end.'
				),
				off: when('left <= 0 in', 'Stepped off at {pitch}, the last hole is off the piece.'),
				wide: when(
					'pitch > greatestPitch',
					'{pitch} is wider than the maximum pitch, and the last hole stands {left} from the far end, not {endMargin}.'
				),
				missed: otherwise(
					'Stepped off at {pitch}, the last hole stands {left} from the far end, not {endMargin}.'
				)
			}
		),
		outcome(
			['positions'],
			{
				holes: shown('howMany(positions)', count),
				first: shown('smallest(positions)'),
				left: shown('length - largest(positions)'),
				widest: shown('largest(spacesBetween(positions))')
			},
			{
				more: when(
					'holes > right.count',
					'{holes} holes are too many: fewer still keep within the maximum pitch.'
				),
				fewer: when('holes < right.count', '{holes} holes are too few for this row.'),
				right: when(
					`largest(abs(positions - right.positions)) <= ${line}`,
					'The first hole stands {first} from the reference edge, the last one {left} from the far end.'
				),
				off: when(
					'first <= 0 in or left <= 0 in',
					'A hole centre lies on an end of the piece, or off it.'
				),
				wide: when(
					`widest > greatestPitch + ${line}`,
					'A space of {widest} is wider than the maximum pitch, {greatestPitch}.'
				),
				margins: when(
					`abs(first - endMargin) > ${line} or abs(left - endMargin) > ${line}`,
					'The first hole stands {first} from the reference edge, the last one {left} from the far end; {endMargin} is wanted at both.'
				),
				uneven: otherwise('The spaces are not equal: the widest is {widest}.')
			}
		)
	]
});
