import { type Row, testTold } from './told-rows.ts';

/*
 * What other entries tell of a wrong one: what somebody does in one step is done in the next step too,
 * and what was entered right was worked on with. Above each, what was done.
 */

const bar = (code: { bar: number; piece: number; kerf: number }) =>
	({ code: 'CP', id: 'bar-pieces', given: code, asked: ['count', 'used', 'remnant'] }) as const;

const sheet = (
	[sheetLength, sheetWidth, pieceLength, pieceWidth, kerf]: readonly number[],
	...asked: readonly string[]
) => {
	const given = { sheetLength, sheetWidth, pieceLength, pieceWidth, kerf } as Row['given'];
	return { code: 'CS', id: 'pieces-per-sheet', given, asked };
};

const leg = (given: Row['given']) =>
	({ code: 'BE', id: 'sight-line-leg', given, asked: ['K', 'setback', 'leg'] }) as const;

const rows: readonly Row[] = [
	// 120 / 2 5/8 is 45.7, and so is 119 7/8 / 2 5/8. The bar used is 45 times 2 3/4: the kerf was not forgotten.
	{
		...bar({ bar: 120, piece: 2.625, kerf: 0.125 }),
		typed: { count: '45', used: '123.75' },
		told: { count: 'oneKerfOff', used: 'right' }
	},
	// 35.95 pieces rounded up, or one kerf taken off. 36 times 2 43/64 is more than the bar, so that nothing is left.
	{
		...bar({ bar: 96, piece: 2.625, kerf: 0.046875 }),
		typed: { count: '36', used: '96.1875' },
		told: { count: 'oneKerfOff or up', used: 'right' }
	},
	{
		...bar({ bar: 96, piece: 2.625, kerf: 0.046875 }),
		typed: { count: '36', remnant: '0' },
		told: { count: 'oneKerfOff or up', remnant: 'right' }
	},
	// 44 pieces with 1/16 in kerfs, or 43 with kerfs of 1/8 in: either way 118 1/4 of 120 in.
	{
		...bar({ bar: 120, piece: 2.625, kerf: 0.046875 }),
		typed: { remnant: '1.75' },
		told: { remnant: 'usedSixteenth or kerfEighth+usedEighth' }
	},
	// A kerf more than the 119.3125 typed: a fraction is come to in many a way.
	{
		...bar({ bar: 120, piece: 2.5, kerf: 0.09375 }),
		typed: { count: '46', used: '119.3125', remnant: '19/32' },
		told: { count: 'right', used: 'right', remnant: 'cannot tell' }
	},
	// No kerf anywhere: 6 by 6 and 15 by 2. Rounding would have made three across the turned sheet, too.
	{
		...sheet([120, 48, 18.5, 8, 0.0625], 'lengthwise', 'crosswise', 'count'),
		typed: { lengthwise: '36', crosswise: '30', count: '36' },
		told: { lengthwise: 'noKerfAcross', crosswise: 'noKerfTurnedAlong', count: 'right' }
	},
	// 8 by 9: without a kerf, or 8.8 rounded. And 8.27 by 8.76 is 72.4.
	{
		...sheet([96, 36, 11.5, 4, 0.125], 'count'),
		typed: { count: '72' },
		told: { count: 'noKerfAcross or nearestAcross or roundedLast' }
	},
	// One edge of two; half of each allowance comes to the same and is seldom met.
	{
		code: 'CB',
		id: 'blank-size',
		given: {
			finishedLength: 7,
			finishedWidth: 4.625,
			trimmedEnds: 2,
			endTrim: 1,
			trimmedEdges: 2,
			edgeTrim: 1
		},
		asked: ['addedWidth', 'blankWidth'],
		typed: { addedWidth: '1', blankWidth: '5.625' },
		told: { addedWidth: 'oneEdge', blankWidth: 'right' }
	},
	// R + T for the setback on both legs, 0.1258 in, as at a square bend.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.09375, T: 0.032, legs: [1.5, 2.125], angles: [105] },
		asked: ['width'],
		typed: { width: '3.5713' },
		told: { width: 'square' }
	},
	// The same to hundredths.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.09375, T: 0.032, legs: [1.5, 2.125], angles: [105] },
		asked: ['width'],
		typed: { width: '3.57' },
		told: { width: 'square' }
	},
	// The head number is right, and then the narrow head's is written.
	{
		code: 'RN',
		id: 'rivet-number',
		given: { head: 'countersunk', alloy: '2017', D: 0.15625, length: 0.5 },
		asked: ['headNumber', 'number'],
		typed: { headNumber: '426', number: 'MS20425D5-8' },
		told: { headNumber: 'right', number: 'narrowHead' }
	},
	// Grip and shank right: the 5/16 that the shank alone would take may have come about otherwise.
	{
		code: 'RL',
		id: 'rivet-length',
		given: { layers: [0.063, 0.05, 0.05], D: 0.1875 },
		asked: ['grip', 'shank', 'needed', 'length'],
		typed: { grip: '.163', shank: '.2813', needed: '.4443', length: '5/16' },
		told: { grip: 'right', shank: 'right', needed: 'right', length: 'cannot tell' }
	},
	// No edges: from the first row to the last. The rows are right.
	{
		code: 'LF',
		id: 'lap-width',
		given: { D: 0.15625, head: 'protruding', rows: 2, pitch: 1.1875 },
		asked: ['rowsApart', 'width'],
		typed: { rowsApart: '.8906', width: '.8906' },
		told: { rowsApart: 'right', width: 'noEdges' }
	},
	// 2D between the rows, as at the edge.
	{
		code: 'LF',
		id: 'lap-width',
		given: { D: 0.125, head: 'protruding', rows: 2, pitch: 0.875 },
		asked: ['rowsApart', 'width'],
		typed: { rowsApart: '1/4', width: '1.1563' },
		told: { rowsApart: 'edgeForRows', width: 'right' }
	},
	{
		code: 'LF',
		id: 'lap-width',
		given: { D: 0.1875, head: 'protruding', rows: 3, pitch: 1.3125 },
		asked: ['edge', 'rowsApart', 'width'],
		typed: { edge: '.375', rowsApart: '3/8', width: '2.7188' },
		told: { edge: 'right', rowsApart: 'edgeForRows', width: 'right' }
	},
	// The thickness for the radius: 1T.
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '6061-O', T: 0.04 },
		asked: ['radius', 'in32nds'],
		typed: { radius: '.040', in32nds: '.0625' },
		told: { radius: 'thickness', in32nds: 'right' }
	},
	// K of the row before, .2586. Where K is right to the digit, nobody was in that row.
	{
		...leg({ R: 0.15625, T: 0.071, angle: 30, tangentLine: 1.59 }),
		typed: { setback: '.0588' },
		told: { setback: 'rowBefore' }
	},
	{
		...leg({ R: 0.15625, T: 0.071, angle: 30, tangentLine: 1.59 }),
		typed: { K: '.2679', setback: '.0588', leg: '1.6509' },
		told: { K: 'right', setback: 'cannot tell', leg: 'right' }
	},
	// 2.5T twice, where 3T of .050 in is .150 in: a copy, for the sizes further on are right.
	{
		code: 'RT',
		id: 'rivet-diameter-in-range',
		given: { thickest: 0.05 },
		asked: ['lowEnd', 'threeT', 'inRange', 'above'],
		typed: { lowEnd: '.125', threeT: '.125', inRange: '.125', above: '.1563' },
		told: { lowEnd: 'right', threeT: 'other-step:lowEnd', inRange: 'right', above: 'right' }
	},
	// 3/16 for .2125 in. It is R, too, but T was in the line that follows.
	{
		code: 'BG',
		id: 'sight-line',
		given: { leg: 0.875, R: 0.1875, T: 0.025, angle: 90 },
		asked: ['setback', 'tangentLine', 'sightLine'],
		typed: { setback: '.1875', tangentLine: '.6625', sightLine: '.85' },
		told: { setback: 'rounding:end', tangentLine: 'right', sightLine: 'right' }
	},
	// The 5/32 rivet is put in, and 3T itself, .150 in, worked on with: .09 and .225.
	{
		code: 'PN',
		id: 'panel-rivets',
		given: { layers: [0.05, 0.04], rows: 2, count: 18 },
		asked: ['diameter', 'needed'],
		typed: { diameter: '.1563', needed: '.315' },
		told: { diameter: 'right', needed: 'diameter.notStocked' }
	},
	// One size over, as a decimal that no bin holds, and 4D of the stocked size.
	{
		code: 'PN',
		id: 'panel-rows',
		given: {
			layers: [0.025, 0.04],
			head: 'protruding',
			rowLength: 15.5,
			greatestPitch: 0.75,
			rows: 3
		},
		asked: ['diameter', 'greatest'],
		typed: { diameter: '.1563', greatest: '.625' },
		told: { diameter: 'diameter.oneMore', greatest: 'diameter.oneMore' }
	},
	// The number of spaces where their positions are asked.
	{
		code: 'LR',
		id: 'rivet-row',
		given: { length: 6.625, endMargin: 0.3125, greatestPitch: 0.75 },
		asked: ['spaces', 'positions'],
		typed: { positions: '8' },
		told: { positions: 'unread' }
	},
	// One value for both bends' legs, and that in the next field too.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.25, T: 0.063, legs: [1.25, 1.5625, 0.75], angles: [90, 90] },
		asked: ['taken', 'width'],
		typed: { taken: '.7777', width: '.7777' },
		told: { taken: 'unread', width: 'cannot tell' }
	},
	// No kerf along: 120 / 10. A blank is 12 in long as well, which is no number of blanks.
	{
		...sheet([120, 48, 12, 10, 0.125], 'turnedAlong', 'turnedAcross', 'crosswise'),
		typed: { turnedAlong: '12', turnedAcross: '3', crosswise: '36' },
		told: { turnedAlong: 'noKerfTurnedAlong', turnedAcross: 'right', crosswise: 'right' }
	},
	// One value where five flats are asked is none to copy for the four bends.
	{
		code: 'BW',
		id: 'developed-width',
		given: {
			R: 0.125,
			T: 0.04,
			legs: [0.875, 1.125, 1.5625, 1.125, 0.875],
			angles: [90, 90, 90, 90]
		},
		asked: ['flats', 'allowances'],
		typed: { flats: '.7777', allowances: '.7777' },
		told: { flats: 'unread', allowances: 'cannot tell' }
	},
	// R alone for the setback: .5625 and 1.25 in flat, and .2136 in for the bend. Half a list speaks for nothing.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.125, T: 0.025, legs: [0.6875, 1.375], angles: [90] },
		asked: ['flats', 'width'],
		typed: { width: '2.0261' },
		told: { width: 'noT' }
	},
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.125, T: 0.025, legs: [0.6875, 1.375], angles: [90] },
		asked: ['flats', 'width'],
		typed: { flats: '.5375', width: '2.0261' },
		told: { flats: 'unread', width: 'noT' }
	},
	// 48 by area, with no part of a blank left to round up. The same was not done for the turned blanks.
	{
		...sheet([120, 48, 12, 10, 0.125], 'lengthwise', 'count'),
		typed: { lengthwise: '48', count: '48' },
		told: { lengthwise: 'area', count: 'right' }
	},
	// A number from nowhere in two fields of unlike sorts.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.125, T: 0.025, legs: [0.6875, 1.375], angles: [90] },
		asked: ['K', 'width'],
		typed: { K: '.7777', width: '.7777' },
		told: { K: 'cannot tell', width: 'cannot tell' }
	}
];

testTold(rows);
