import { type Row, testTold } from './told-rows.ts';

/*
 * What the rest of a sheet tells about one entry, and what few digits still tell. Answers that people wrote who
 * did not know the slips; above each, what was done.
 */

/** Seven rivets, 1.1406 in apart. */
const shortRow = {
	code: 'LR',
	id: 'rivet-row',
	given: { length: 7.625, endMargin: 25 / 64, greatestPitch: 1.25 }
};

/** A −5 rivet, called out by its older number. */
const dashFive = {
	code: 'HP',
	id: 'drill-for-rivet-from-number',
	given: { number: 'AN470AD5-8' }
};

/** A sheet of 4 by 12 ft. */
const wholeSheet = {
	code: 'CW',
	id: 'sheet-weight',
	given: { length: 144, width: 48, T: 0.032, alloy: '1100-H14' },
	asked: ['weight']
};

/** A bumped part with an inch of trim at one end and at both edges. */
const blister = {
	code: 'CB',
	id: 'blank-size',
	given: {
		...{ finishedLength: 7.375, trimmedEnds: 1, endTrim: 1 },
		...{ finishedWidth: 3.625, trimmedEdges: 2, edgeTrim: 1 }
	},
	asked: ['blankLength', 'blankWidth']
};

const rows: readonly Row[] = [
	// A rivet added at both ends: the run is right, so the whole length was not divided.
	{
		code: 'LR',
		id: 'rivet-row',
		given: { length: 22.5, endMargin: 0.25, greatestPitch: 1 },
		asked: ['run', 'count'],
		typed: { run: '22', count: '24' },
		told: { run: 'right', count: 'oneSpaceMore or oneRivetMore' }
	},
	// The margin of 25/64 read as 25/32, which is twice as much: the first hole shows that it was.
	{
		...shortRow,
		asked: ['count', 'pitch', 'positions'],
		typed: {
			count: '6',
			pitch: '1.2125',
			positions: '.781, 1.994, 3.206, 4.419, 5.631, 6.844'
		},
		told: {
			count: 'misread:endMargin',
			pitch: 'misread:endMargin',
			positions: 'misread:endMargin'
		}
	},
	// K read for the angle between the legs, and the allowance right.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.09375, T: 0.02, legs: [1.375, 2.0625], angles: [105] },
		asked: ['flats', 'allowances', 'width'],
		typed: { flats: '1.288, 1.975', allowances: '.188', width: '3.451' },
		told: { flats: 'legs', allowances: 'right', width: 'right' }
	},
	// The dash number 5 counted as 6, all the way down.
	{
		...dashFive,
		asked: ['pilot', 'final', 'clearance'],
		typed: { pilot: '3/16', final: '#11', clearance: '.0035' },
		told: { pilot: 'diameterOneOver', final: 'diameterOneOver', clearance: 'diameterOneOver' }
	},
	// Two digits of a drill's number, of a whole number in a list, of a value that was rounded.
	{
		...dashFive,
		asked: ['pilot', 'final'],
		typed: { pilot: '5/32', final: '#12' },
		told: { pilot: 'right', final: 'digits:swapped' }
	},
	{
		...shortRow,
		asked: ['count', 'positions'],
		typed: { count: '7', positions: '.391, 1.531, 2.672, 3.813, 4.953, 6.094, 7.324' },
		told: { count: 'right', positions: 'digits:swapped' }
	},
	{
		code: 'SC',
		id: 'shop-head-check',
		given: { D: 0.125, width: 0.176, height: 0.069 },
		asked: ['leastWidth', 'mostWidth'],
		typed: { leastWidth: '.156', mostWidth: '.280' },
		told: { leastWidth: 'right', mostWidth: 'digits:swapped' }
	},
	{
		code: 'LR',
		id: 'rivet-row',
		given: { length: 22.5, endMargin: 0.25, greatestPitch: 1.75 },
		asked: ['count'],
		typed: { count: '41' },
		told: { count: 'digits:swapped' }
	},
	// Three figures of a weight without its thickness; with two digits of the thickness, and of the length, exchanged.
	{
		...wholeSheet,
		typed: { weight: '677' },
		told: { weight: 'noThickness' }
	},
	{
		...wholeSheet,
		typed: { weight: '15.6' },
		told: { weight: 'misread:T' }
	},
	{
		code: 'CW',
		id: 'sheet-weight',
		given: { length: 87, width: 44, T: 0.04, alloy: '6061-T6' },
		asked: ['weight'],
		typed: { weight: '13.45' },
		told: { weight: 'misread:length' }
	},
	// 1 1/16 read as 11/16; 3 5/8 as 3 3/8.
	{
		code: 'RN',
		id: 'rivet-number',
		given: { head: 'universal', alloy: '2017', D: 0.25, length: 1.0625 },
		asked: ['headNumber', 'letters', 'number'],
		typed: { headNumber: '470', letters: 'D', number: 'MS20470D8-11' },
		told: { headNumber: 'right', letters: 'right', number: 'misread:length' }
	},
	{
		...blister,
		typed: { blankLength: '8 3/8', blankWidth: '5 3/8' },
		told: { blankLength: 'right', blankWidth: 'misread:finishedWidth' }
	},
	// The 1/2 in of the note, which is half of one trim and one of two.
	{
		...blister,
		typed: { blankLength: '7 7/8', blankWidth: '4 5/8' },
		told: { blankLength: 'leastAtEnds', blankWidth: 'leastAtEdges' }
	},
	// A half size left out, where what is left is the dash number of the diameter as well.
	{
		code: 'RN',
		id: 'rivet-number',
		given: { head: 'countersunk', alloy: '2117', D: 0.1875, length: 0.40625 },
		asked: ['headNumber', 'letters', 'number'],
		typed: { headNumber: '426', letters: 'AD', number: 'MS20426AD6-6' },
		told: { headNumber: 'right', letters: 'right', number: 'halfDropped or diameterForLength' }
	},
	// 1/16 in over the minimum: 3D as well, of such a rivet.
	{
		code: 'ED',
		id: 'edge-distance',
		given: { D: 0.125, head: 'countersunk' },
		asked: ['least'],
		typed: { least: '3/8' },
		told: { least: 'pitchFactor or sixteenthAdded' }
	},
	// .16 taken down to 1/8.
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '6061-T6', T: 0.063 },
		asked: ['radius', 'in32nds'],
		typed: { radius: '.16', in32nds: '1/8' },
		told: { radius: 'right', in32nds: 'one32ndUnder' }
	},
	// One digit is right of many a number: its point tells nothing.
	{
		code: 'BA',
		id: 'bend-allowance',
		given: { R: 0.09375, T: 0.04, angle: 110 },
		asked: ['forThickness', 'allowance'],
		typed: { forThickness: '.003', allowance: '.214' },
		told: { forThickness: 'cannot tell', allowance: 'right' }
	},
	// Whole millimetres, as a metric shop writes 5/16 and .2344 in.
	{
		code: 'ED',
		id: 'edge-distance',
		given: { D: 0.125, head: 'countersunk' },
		asked: ['least'],
		typed: { least: '8 mm' },
		told: { least: 'right' }
	},
	{
		code: 'SH',
		id: 'shop-head',
		given: { D: 0.15625 },
		asked: ['width'],
		typed: { width: '6 mm' },
		told: { width: 'right' }
	}
];

testTold(rows);
