import { choice, length, listOf, rivetDiameter } from '../../quantity/kinds.ts';
import { checked, keep } from '../../solver/checked.ts';
import { given } from '../../solver/given.ts';
import { renamed } from '../../solver/laid.ts';
import { atLeast, atMost } from '../../solver/write.ts';
import { edgeFactor, leastEdge } from '../pieces/least-edge.ts';
import { rivetRow } from '../rivet-row.ts';

/** The least edge distance as the pieces give it, for an end of the row. */
const least = renamed(leastEdge.step.formula, { factor: `(${edgeFactor.step.formula})` });
const spaces = 'spacesBetween(measured)';
const fromStart = { what: 'First hole to its end', rule: 'edge.least' };
const fromEnd = { what: 'Last hole to its end', rule: 'edge.least' };
const nearEnd = 'Too near the end of the piece.';
const leaveEnd =
	'Leave the hole, and ask before you go on: an end is an edge too. Lay out the next row from both ends.';

export const check = checked(rivetRow, {
	measured: { measured: given(listOf(length), 'Hole positions from the reference edge') },
	takes: {
		D: given(rivetDiameter, 'Rivet diameter'),
		head: given(choice(['protruding', 'countersunk']), 'Head')
	},
	optional: ['D', 'head'],
	each: 'hole',
	wanted: 'count',
	times: 'D',
	keeps: [
		keep(
			atMost(spaces, 'greatestPitch', 'Wider than the maximum pitch.', {
				what: 'Pitch',
				rule: 'row.spaces'
			}),
			'pitch',
			'Stop drilling: the row needs a space more. Divide what is left of the run anew, or ask.',
			{
				each: 'space',
				whenDone:
					'Leave the holes, and ask: all of the row is drilled, and the space stays too wide.'
			}
		),
		keep(
			atLeast(spaces, '3 * D', 'Closer than the minimum pitch.', {
				what: 'Pitch',
				rule: 'row.pitch-least'
			}),
			'pitch',
			'Leave both holes, and ask: the metal between them is weak.',
			{ each: 'space' }
		),
		keep(atLeast('member(measured, 1)', least, nearEnd, fromStart), 'run', leaveEnd),
		keep(
			atLeast('length - member(measured, howMany(measured))', least, nearEnd, fromEnd),
			'run',
			leaveEnd
		)
	],
	possible: [
		atLeast(
			'length',
			'largest(measured)',
			'A hole lies beyond the end of the piece; measure it again.'
		),
		atLeast(
			spaces,
			'0 in',
			'The holes are out of order; give them from the reference edge outward.'
		)
	]
});
