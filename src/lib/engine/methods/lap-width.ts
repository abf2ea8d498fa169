import { choice, count, fraction, rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { atLeast, method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { edgeFactor, leastEdge } from './pieces/least-edge.ts';
import { layoutLine, thousandths } from '../trade/tolerances.ts';
import { inches } from './outcomes/near-right.ts';

const line = inches(layoutLine);

export const lapWidth = method({
	id: 'lap-width',
	title: 'Width of a lap or flange for its rows of rivets',
	given: {
		D: given(rivetDiameter, 'Rivet diameter'),
		head: given(choice(['protruding', 'countersunk']), 'Head'),
		rows: given(count, 'Rows'),
		pitch: given(fraction, 'Pitch in a row')
	},
	steps: {
		factor: edgeFactor,
		edge: leastEdge,
		byPitch: step('0.75 * pitch', '75 percent of the pitch', {
			asks: 'What is 75 percent of the pitch?',

			symbol: 'from pitch',
			rule: 'rows.apart',
			kind: fraction,
			tolerance: layoutLine,
			slips: {
				quarterOff: slip(
					'0.25 * pitch',
					'A quarter of the pitch: 75 percent is what counts, not what is taken off.',
					{ rare: true }
				),
				overThreeQuarters: slip('pitch / 0.75', 'The pitch was divided by 0.75: multiply it.', {
					rare: true
				}),
				twoThirds: slip(
					'2 * pitch / 3',
					'Two thirds of the pitch: the rows stand 75 percent of it apart.',
					{ rare: true }
				),
				fullPitch: slip(
					'pitch',
					'The full pitch: the rows stand 75 percent of the pitch apart here.'
				)
			}
		}),
		closest: step('2.5 * D', 'Minimum distance between rows', {
			asks: 'How near may two rows stand?',

			rule: 'rows.apart',
			kind: fraction,
			tolerance: thousandths
		}),
		rowsApart: step('max(byPitch, closest)', 'Distance from row to row', {
			asks: 'So how far do the rows stand apart?',

			rule: 'rows.apart',
			kind: fraction,
			tolerance: layoutLine,
			slips: {
				stagger: slip(
					'0.5 * pitch',
					'Half the pitch is how far the next row is shifted along, not how far apart the rows stand.'
				),
				closestAlone: slip(
					'closest',
					'2.5D alone is only the minimum: where 75 percent of the pitch is more, that counts.'
				),
				pitchAlone: slip(
					'byPitch',
					'That goes by the pitch alone: rows never stand closer than 2.5D.'
				),
				bothAdded: slip(
					'byPitch + closest',
					'75 percent of the pitch and 2.5D were added: the larger of them counts.',
					{ rare: true }
				),
				greatestEdge: slip(
					'4 * D',
					'4D is the maximum edge distance: rows go by 75 percent of the pitch, and stand at least 2.5D apart.',
					{ rare: true }
				),
				edgeForRows: slip('2 * D', '2D is an edge distance: rows stand at least 2.5D apart.'),
				fiveD: slip(
					'5 * D',
					'5D: rows go by 75 percent of the pitch, and stand at least 2.5D apart.',
					{ rare: true, late: true }
				),
				quarterAlone: slip(
					'0.25 * pitch',
					'A quarter of the pitch apart: take 75 percent of it, do not take 75 percent off.',
					{ rare: true }
				),
				pitchFloor: slip('3 * D', '3D is the minimum pitch along a row, not across the rows.')
			}
		}),
		width: step('2 * edge + (rows - 1) * rowsApart', 'Width of the lap', {
			asks: 'How wide is the lap with that?',

			rule: 'rows.width',
			kind: fraction,
			tolerance: layoutLine,
			slips: {
				oneEdge: slip(
					'edge + (rows - 1) * rowsApart',
					'Only one edge distance: the lap has an edge on both sides.'
				),
				spacePerRow: slip(
					'2 * edge + rows * rowsApart',
					'A space counted for every row: there is one space fewer than rows.'
				),
				oneSpace: slip('2 * edge + rowsApart', 'One space between rows only: three rows have two.'),
				bothSheets: slip(
					'4 * edge + 2 * (rows - 1) * rowsApart',
					'The lap was counted twice: both sheets lie on the same width.',
					{ rare: true }
				),
				fourEdges: slip(
					'4 * edge + (rows - 1) * rowsApart',
					'The edge distances were counted twice: the lap has an edge on either side, two in all.',
					{ rare: true, late: true }
				),
				edgeAtEachRow: slip(
					'2 * rows * edge',
					'Two edge distances for every row: between the rows stands the distance from row to row.',
					{ rare: true }
				),
				edgesOnly: slip(
					'2 * edge',
					'Only the two edge distances: the space between the rows is missing.'
				),
				noEdges: slip(
					'(rows - 1) * rowsApart',
					'Only the space between the rows: the edge distances are missing.'
				)
			}
		})
	},
	limits: [atLeast('rows', '1', 'A lap has at least one row of rivets: make the rows 1 or more.')],
	outcomes: [
		outcome(
			['width'],
			{ left: shown('width - edge - (rows - 1) * rowsApart', fraction) },
			{
				off: when('left <= 0 in', 'A lap {width} wide has no metal outside its last row.'),
				narrow: when(
					`left < edge - ${line}`,
					'In a lap {width} wide the last row stands {left} from the far edge, nearer than the minimum edge distance.'
				),
				right: when(
					`left <= edge + ${line}`,
					'In a lap {width} wide the last row has its edge distance, as the first does.'
				),
				wide: otherwise(
					'In a lap {width} wide the last row stands {left} from the far edge, more than the minimum edge distance.'
				)
			}
		),
		outcome(
			['rowsApart'],
			{},
			{
				together: when('entered <= 0 in', 'Rows {entered} apart are not two rows.'),
				right: when(
					`abs(entered - right.rowsApart) <= ${line}`,
					'With rows {entered} apart the lap comes out {width} wide.'
				),
				underClosest: when('entered < closest', 'Rows {entered} apart stand closer than 2.5D.'),
				underByPitch: when(
					'entered < byPitch',
					'Rows {entered} apart stand closer than 75 percent of the pitch.'
				),
				wide: otherwise(
					'With rows {entered} apart the lap comes out {width} wide, more than it needs.'
				)
			}
		)
	]
});
