import { count, fraction } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { atMost, method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { layoutLine } from '../trade/tolerances.ts';
import { inches } from './outcomes/near-right.ts';

/** What a blank has over the finished part, and what is wanted. */
const trimmed = (blank: string, finished: string, added: string) => ({
	extra: shown(`${blank} - ${finished}`, fraction),
	short: shown(`${finished} - ${blank}`, fraction),
	wanted: shown(`right.${added}`),
	part: shown('wanted > 0 in ? extra / wanted : 0')
});

const rule = inches(layoutLine);

/** What sandbag work takes at least: FAA-H-8083-31B, ch. 4, p. 4-80. */
const leastTrim = '1/2 in';

const leftToTrim = {
	small: when('extra < 0 in', 'The blank is {short} smaller than the finished part.'),
	none: when('extra <= 0 in', 'Nothing is left to trim: the rough edge is the finished edge.'),
	rough: when(
		`extra < wanted - ${rule}`,
		'The blank has {extra} to trim off, too little for every side: a side stays rough.'
	),
	waste: when(
		`extra > wanted + ${rule}`,
		'The blank has {extra} to trim off, more than is needed: the rest is waste.'
	),
	wanted: otherwise('The blank has {extra} to trim off, as wanted.')
};

export const blankSize = method({
	id: 'blank-size',
	title: 'Blank with trim on the sides that are finished to the line',
	given: {
		finishedLength: given(fraction, 'Finished length'),
		finishedWidth: given(fraction, 'Finished width'),
		trimmedEnds: given(count, 'Ends trimmed', { zero: true }),
		endTrim: given(fraction, 'Trim at an end', { zero: true }),
		trimmedEdges: given(count, 'Long edges trimmed', { zero: true }),
		edgeTrim: given(fraction, 'Trim at a long edge', { zero: true })
	},
	steps: {
		addedLength: step('trimmedEnds * endTrim', 'Trim along the length', {
			asks: 'How much is trimmed along the length, both ends together?',

			rule: 'cut.trim',
			kind: fraction,
			tolerance: layoutLine,
			slips: {
				oneEnd: slip('endTrim', 'Trim for one end only: both ends are trimmed.', {
					act: 'one side'
				}),
				halfEnd: slip(
					'trimmedEnds * endTrim / 2',
					'Half of the trim at the end: each end takes all of it.',
					{ rare: true }
				),
				twiceEnd: slip(
					'2 * trimmedEnds * endTrim',
					'Twice the trim at each end: add it once, and as much as is asked for.',
					{ rare: true, act: 'twice' }
				),
				asManyAsEdges: slip(
					'trimmedEdges * endTrim',
					'As many ends as edges: count the ends that are trimmed.',
					{ rare: true }
				),
				bothEnds: slip('2 * endTrim', 'Trim for both ends: only one end is trimmed.', {
					act: 'both sides'
				}),
				edgeTrimOnLength: slip(
					'trimmedEnds * edgeTrim',
					'The trim of the long edges was used at the ends.',
					{ act: 'other trim' }
				),
				leastAtEnds: slip(
					`trimmedEnds * (${leastTrim})`,
					'1/2 in at an end is the minimum for sandbag work: this task gives its own trim.',
					{ rare: true, act: 'least trim', late: true }
				)
			}
		}),
		blankLength: step('finishedLength + addedLength', 'Length of the blank', {
			asks: 'So how long do you cut the blank?',

			rule: 'cut.trim',
			kind: fraction,
			tolerance: layoutLine,
			slips: {
				allSides: slip(
					'finishedLength + addedLength + trimmedEdges * edgeTrim',
					'The trim of all sides was added to the length: the long edges are trimmed across the width.',
					{ rare: true }
				),
				inchLost: slip(
					'finishedLength + addedLength - (1 in)',
					'An inch was lost in adding the fractions.',
					{ rare: true }
				),
				noEndTrim: slip(
					'finishedLength',
					'No trim on the length: nothing is left to cut to the line.',
					{ act: 'no trim' }
				),
				endTrimOff: slip(
					'finishedLength - addedLength',
					'The trim was taken off the length: it is added to the finished size.',
					{ act: 'trim off' }
				)
			}
		}),
		addedWidth: step('trimmedEdges * edgeTrim', 'Trim across the width', {
			asks: 'How much is trimmed across the width, both edges together?',

			rule: 'cut.trim',
			kind: fraction,
			tolerance: layoutLine,
			slips: {
				oneEdge: slip('edgeTrim', 'Trim for one long edge only: both are trimmed.', {
					act: 'one side'
				}),
				halfEdge: slip(
					'trimmedEdges * edgeTrim / 2',
					'Half of the trim at the long edge: each edge takes all of it.',
					{ rare: true }
				),
				asManyAsEnds: slip(
					'trimmedEnds * edgeTrim',
					'As many long edges as ends: count the edges that are trimmed.',
					{ rare: true }
				),
				lengthTrimOnWidth: slip(
					'trimmedEnds * endTrim',
					'The trim of the length was added to the width.',
					{ rare: true }
				),
				bothEdges: slip('2 * edgeTrim', 'Trim for both long edges: only one of them is trimmed.', {
					act: 'both sides'
				}),
				endTrimOnWidth: slip(
					'trimmedEdges * endTrim',
					'The trim of the ends was used at the long edges.',
					{ act: 'other trim' }
				),
				twiceEdge: slip(
					'2 * trimmedEdges * edgeTrim',
					'Twice the trim at each long edge: add it once, and as much as is asked for.',
					{ rare: true, act: 'twice', late: true }
				),
				leastAtEdges: slip(
					`trimmedEdges * (${leastTrim})`,
					'1/2 in at a long edge is the minimum for sandbag work: this task gives its own trim.',
					{ rare: true, act: 'least trim', late: true }
				)
			}
		}),
		blankWidth: step('finishedWidth + addedWidth', 'Width of the blank', {
			asks: 'And how wide do you cut it?',

			rule: 'cut.trim',
			kind: fraction,
			tolerance: layoutLine,
			slips: {
				noEdgeTrim: slip(
					'finishedWidth',
					'No trim on the width: nothing is left to cut to the line.',
					{ act: 'no trim' }
				),
				edgeTrimOff: slip(
					'finishedWidth - addedWidth',
					'The trim was taken off the width: it is added to the finished size.',
					{ act: 'trim off' }
				),
				inchOfWidthLost: slip(
					'finishedWidth + addedWidth - (1 in)',
					'An inch of the width was lost in adding the fractions.',
					{ rare: true, late: true }
				)
			}
		})
	},
	limits: [
		atMost('trimmedEnds', '2', 'A blank has two ends: trim no more than both.'),
		atMost('trimmedEdges', '2', 'A blank has two long edges: trim no more than both.')
	],
	outcomes: [
		outcome(['blankLength'], trimmed('blankLength', 'finishedLength', 'addedLength'), leftToTrim),
		outcome(['blankWidth'], trimmed('blankWidth', 'finishedWidth', 'addedWidth'), leftToTrim)
	]
});
