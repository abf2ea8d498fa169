import { choice, count, fraction, rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { atLeast, method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { edgeFactor, leastEdge } from './pieces/least-edge.ts';
import { layoutLine, thousandths } from '../trade/tolerances.ts';

const line = `(${layoutLine.amount} in)`;

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
			symbol: 'from pitch',
			rule: 'rows.apart',
			tolerance: thousandths,
			slips: {
				fullPitch: slip(
					'pitch',
					'The full pitch: the rows stand 75 percent of the pitch apart here.'
				)
			}
		}),
		closest: step('2.5 * D', 'Closest that rows may stand', {
			rule: 'rows.apart',
			tolerance: thousandths
		}),
		rowsApart: step('max(byPitch, closest)', 'Distance from row to row', {
			rule: 'rows.apart',
			tolerance: layoutLine,
			slips: {
				stagger: slip(
					'0.5 * pitch',
					'Half the pitch is how far the next row is shifted along, not how far apart the rows stand.'
				),
				closestAlone: slip(
					'closest',
					'2.5 D is the closest allowed; 75 percent of the pitch is more, and that is what is asked for.'
				),
				pitchAlone: slip(
					'byPitch',
					'75 percent of the pitch is under 2.5 D here: rows never stand closer than that.'
				),
				pitchFloor: slip('3 * D', '3 D is the least pitch along a row, not across the rows.')
			}
		}),
		width: step('2 * edge + (rows - 1) * rowsApart', 'Width of the lap', {
			rule: 'rows.width',
			tolerance: layoutLine,
			slips: {
				oneEdge: slip(
					'edge + (rows - 1) * rowsApart',
					'One edge distance only: the lap has an edge on both sides.'
				),
				spacePerRow: slip(
					'2 * edge + rows * rowsApart',
					'A space for every row: between the rows there is one space less than rows.'
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
					'In a lap {width} wide the last row stands {left} from the far edge, nearer than {edge}.'
				),
				right: when(
					`left <= edge + ${line}`,
					'In a lap {width} wide the last row has its edge distance, as the first does.'
				),
				wide: otherwise(
					'In a lap {width} wide the last row stands {left} from the far edge; {edge} is enough.'
				)
			}
		),
		outcome(
			['rowsApart'],
			{ more: shown('width - right.width') },
			{
				together: when('entered <= 0 in', 'Rows {entered} apart are not two rows.'),
				right: when(
					`abs(entered - right.rowsApart) <= ${line}`,
					'With rows {entered} apart the lap comes out {width} wide.'
				),
				underClosest: when(
					'entered < closest',
					'Rows {entered} apart stand closer than 2.5 D, which is {closest}.'
				),
				underByPitch: when(
					'entered < byPitch',
					'Rows {entered} apart stand closer than 75 percent of the pitch, which is {byPitch}.'
				),
				wide: otherwise(
					'With rows {entered} apart the lap comes out {width} wide, {more} more than it needs.'
				)
			}
		)
	]
});
