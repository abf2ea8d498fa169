import { choice, count, length, limit, method, slip, step } from '../solver/method.ts';
import { chartFactor, layoutLine, thousandths } from '../trade/tolerances.ts';

export const lapWidth = method({
	id: 'lap-width',
	title: 'Width of a lap or flange for its rows of rivets',
	given: {
		D: length('Rivet diameter', { style: 'rivet-diameter' }),
		head: choice('Head', ['protruding', 'countersunk']),
		rows: count('Rows'),
		pitch: length('Pitch in a row', { style: 'fraction' })
	},
	steps: {
		factor: step('leastEdge(head)', 'Least edge distance in rivet diameters', {
			rule: 'edge.least',
			tolerance: chartFactor
		}),
		edge: step('factor * D', 'Least edge distance', {
			rule: 'edge.least',
			style: 'fraction',
			tolerance: thousandths
		}),
		byPitch: step('0.75 * pitch', '75 percent of the pitch', {
			symbol: 'from pitch',
			rule: 'rows.apart',
			tolerance: thousandths
		}),
		closest: step('2.5 * D', 'Closest that rows may stand', {
			rule: 'rows.apart',
			tolerance: thousandths
		}),
		rowsApart: step('max(byPitch, closest)', 'Distance from row to row', {
			rule: 'rows.apart',
			tolerance: layoutLine
		}),
		width: step('2 * edge + (rows - 1) * rowsApart', 'Width of the lap', {
			rule: 'rows.width',
			tolerance: layoutLine
		})
	},
	slips: {
		flushFactor: slip(
			'factor',
			'2.5',
			'2.5 D is the least for a countersunk head; a protruding head needs 2 D.'
		),
		protrudingFactor: slip(
			'factor',
			'2',
			'2 D is the least for a protruding head; a countersunk one needs 2.5 D.'
		),
		pitchFactor: slip(
			'factor',
			'3',
			'3 D is the least pitch, from rivet to rivet, not to the edge.'
		),
		shankFactor: slip(
			'factor',
			'1.5',
			'1.5 D is the shank for the shop head, not an edge distance.'
		),
		fullPitch: slip(
			'byPitch',
			'pitch',
			'The full pitch: the rows stand 75 percent of the pitch apart here.'
		),
		stagger: slip(
			'rowsApart',
			'0.5 * pitch',
			'Half the pitch is how far the next row is shifted along, not how far apart the rows stand.'
		),
		closestAlone: slip(
			'rowsApart',
			'closest',
			'2.5 D is the closest allowed; 75 percent of the pitch is more, and that is what is asked for.'
		),
		pitchAlone: slip(
			'rowsApart',
			'byPitch',
			'75 percent of the pitch is under 2.5 D here: rows never stand closer than that.'
		),
		pitchFloor: slip(
			'rowsApart',
			'3 * D',
			'3 D is the least pitch along a row, not across the rows.'
		),
		oneEdge: slip(
			'width',
			'edge + (rows - 1) * rowsApart',
			'One edge distance only: the lap has an edge on both sides.'
		),
		spacePerRow: slip(
			'width',
			'2 * edge + rows * rowsApart',
			'A space for every row: between the rows there is one space less than rows.'
		),
		edgesOnly: slip(
			'width',
			'2 * edge',
			'Only the two edge distances: the space between the rows is missing.'
		),
		noEdges: slip(
			'width',
			'(rows - 1) * rowsApart',
			'Only the space between the rows: the edge distances are missing.'
		)
	},
	limits: [limit('rows - 1', 'A lap has at least one row of rivets: make the rows 1 or more.')]
});
