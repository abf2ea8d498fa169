import { type Row, testTold } from './told-rows.ts';

/*
 * What is told about answers that were devised by hand, without a look at the slips. Above each, what
 * was done.
 */
const rows: readonly Row[] = [
	// 13/32 is long enough, and its top number is typed for the dash number.
	{
		code: 'RL',
		id: 'rivet-length',
		given: { layers: [0.05, 0.032, 0.032], D: 0.1875 },
		asked: ['length'],
		typed: { length: '-13' },
		told: { length: 'topAsDash' }
	},
	// R added after the setback.
	{
		code: 'BE',
		id: 'sight-line-leg',
		given: { R: 0.0625, T: 0.04, angle: 60, tangentLine: 1.64 },
		asked: ['leg'],
		typed: { leg: '1.7617' },
		told: { leg: 'lessRadius' }
	},
	// The same at a square bend, worked on with a setback to four places: twice R and T, so that it may be
	// the diameter for the radius.
	{
		code: 'BE',
		id: 'sight-line-leg',
		given: { R: 0.09375, T: 0.032, angle: 90, tangentLine: 2.16 },
		asked: ['leg'],
		typed: { leg: '2.3796' },
		told: { leg: 'diameter or lessRadius' }
	},
	// No. 31, next under 1/8, as it was drilled out with before.
	{
		code: 'HR',
		id: 'removal-drill',
		given: { layers: [0.025, 0.04], D: 0.15625 },
		asked: ['drill'],
		typed: { drill: '#31' },
		told: { drill: 'numberUnder' }
	},
	// One row and one column beside the cell wanted, in each direction.
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '2024-O', T: 0.09 },
		asked: ['radius'],
		typed: { radius: '.25' },
		told: { radius: 'downAndRight or twoRowsDown' }
	},
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '6061-T6', T: 0.09 },
		asked: ['radius'],
		typed: { radius: '.16' },
		told: { radius: 'upAndLeft or twoRowsUp' }
	},
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '6061-T6', T: 0.05 },
		asked: ['radius'],
		typed: { radius: '.22' },
		told: { radius: 'upAndRight' }
	},
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '7075-T6', T: 0.032 },
		asked: ['radius'],
		typed: { radius: '.09' },
		told: { radius: 'downAndLeft' }
	},
	// Radius right, then cut off to a 32nd.
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '5052-H32', T: 0.1 },
		asked: ['radius', 'in32nds'],
		typed: { radius: '.12', in32nds: '3/32' },
		told: { radius: 'right', in32nds: 'down32nds' }
	},
	// Size right, then 13 64ths written over 32.
	{
		code: 'HD',
		id: 'drill-size',
		given: { drill: 'No. 10' },
		asked: ['size', 'fraction', 'under'],
		typed: { size: '.1935', fraction: '13/32', under: '3/16' },
		told: { size: 'right', fraction: 'over32', under: 'right' }
	},
	// No. 10 stands between 12 and 13 64ths, and both are written over 32.
	{
		code: 'HD',
		id: 'drill-size',
		given: { drill: 'No. 10' },
		asked: ['size', 'fraction', 'under'],
		typed: { size: '.1935', fraction: '13/32', under: '3/8' },
		told: { size: 'right', fraction: 'over32', under: 'underOver32' }
	},
	// One row down and one column to the left.
	{
		code: 'RB',
		id: 'rivets-each-side',
		given: { T: 0.08, D: 0.25, width: 6 },
		asked: ['perInch', 'eachSide'],
		typed: { perInch: '6.3', eachSide: '38' },
		told: { perInch: 'downAndLeft', eachSide: 'right' }
	},
	// 1/8 by 3/4: the top numbers of both.
	{
		code: 'RN',
		id: 'rivet-number',
		given: { head: 'countersunk', alloy: '1100', D: 0.125, length: 0.75 },
		asked: ['number'],
		typed: { number: 'MS20426A1-3' },
		told: { number: 'diameterAsWritten+lengthAsWritten' }
	},
	// The row above for both drills.
	{
		code: 'HP',
		id: 'drill-for-rivet',
		given: { D: 0.15625 },
		asked: ['pilot', 'final'],
		typed: { pilot: '1/8', final: '#30' },
		told: { pilot: 'lastForPilot', final: 'rowAbove' }
	},
	// The pilot 1/32 in under, and the right final drill: no row was missed.
	{
		code: 'HP',
		id: 'drill-for-rivet',
		given: { D: 0.15625 },
		asked: ['pilot', 'final'],
		typed: { pilot: '1/8', final: '#21' },
		told: { pilot: 'removalForPilot', final: 'right' }
	},
	// No kerf anywhere.
	{
		code: 'CP',
		id: 'bar-pieces',
		given: { bar: 96, piece: 3.625, kerf: 0.125 },
		asked: ['count', 'remnant'],
		typed: { count: '26', remnant: '1.75' },
		told: { count: 'noKerf', remnant: 'chipsKept' }
	},
	// 1.5D for the maximum; the minimum has four places, and so no sixteenth was meant.
	{
		code: 'SC',
		id: 'shop-head-check',
		given: { D: 0.125, width: 0.219, height: 0.033 },
		asked: ['leastWidth', 'mostWidth', 'judgement'],
		typed: { leastWidth: '.1563', mostWidth: '.1875', judgement: 'replace' },
		told: { leastWidth: 'right', mostWidth: 'wantedForMost', judgement: 'right' }
	},
	// 5 counted in 16ths. The length is right, so that the two numbers were not exchanged.
	{
		code: 'RR',
		id: 'rivet-number-reading',
		given: { number: 'MS20470AD5-10' },
		asked: ['diameter', 'length'],
		typed: { diameter: '5/16', length: '5/8' },
		told: { diameter: 'diameterIn16ths', length: 'right' }
	},
	// No kerf along the sheet; 14.89 blanks with it may have been rounded to 15 as well.
	{
		code: 'CS',
		id: 'pieces-per-sheet',
		given: { sheetLength: 120, sheetWidth: 48, pieceLength: 8, pieceWidth: 3.5, kerf: 0.0625 },
		asked: ['count'],
		typed: { count: '195' },
		told: { count: 'noKerfAlong or nearestAlong' }
	},
	// The counts along and across added.
	{
		code: 'CS',
		id: 'pieces-per-sheet',
		given: { sheetLength: 120, sheetWidth: 48, pieceLength: 8, pieceWidth: 3.5, kerf: 0.0625 },
		asked: ['count'],
		typed: { count: '27' },
		told: { count: 'rowsAdded' }
	},
	// Size right, then the nearest 64th for the one above it, and the next for the one below.
	{
		code: 'HD',
		id: 'drill-size',
		given: { drill: 'No. 22' },
		asked: ['size', 'fraction', 'under'],
		typed: { size: '.157', fraction: '5/32', under: '9/64' },
		told: { size: 'right', fraction: 'down', under: 'oneLess' }
	},
	// 9/16 worked out, and 4D typed, which is the nearest eighth as well.
	{
		code: 'LF',
		id: 'lap-width',
		given: { D: 0.15625, head: 'countersunk', rows: 2, pitch: 0.75 },
		asked: ['rowsApart'],
		typed: { rowsApart: '5/8' },
		told: { rowsApart: 'greatestEdge' }
	},
	// 3D between the rows, which is 0.75 in, and the width for that: no factor.
	{
		code: 'LF',
		id: 'lap-width',
		given: { D: 0.25, head: 'protruding', rows: 3, pitch: 1.34375 },
		asked: ['rowsApart', 'width'],
		typed: { rowsApart: '.75', width: '2.5' },
		told: { rowsApart: 'pitchFloor', width: 'right' }
	},
	// 3T right, then a rivet two sizes up: nobody takes 4T who has 3T.
	{
		code: 'RD',
		id: 'rivet-diameter-from-stack',
		given: { layers: [0.02, 0.016, 0.04] },
		asked: ['thickest', 'threeT', 'diameter'],
		typed: { thickest: '.040', threeT: '.120', diameter: '3/16' },
		told: { thickest: 'right', threeT: 'right', diameter: 'cannot tell' }
	},
	// 2T of 1.2 mm sheet, by the 0.0472 in that the task shows.
	{
		code: 'RT',
		id: 'rivet-diameter',
		given: { thickest: 1.2 / 25.4 },
		asked: ['threeT', 'diameter'],
		typed: { threeT: '.0944', diameter: '1/8' },
		told: { threeT: 'twoT', diameter: 'right' }
	},
	// One row down; the rack has no 5/16 bar, and the largest one that it has is right by chance.
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '7178-O', T: 0.125 },
		asked: ['radius', 'bar'],
		typed: { radius: '.31', bar: '1/4' },
		told: { radius: 'rowDown or columnRight', bar: 'right' }
	}
];

testTold(rows);
