import { type Row, testTold } from './told-rows.ts';

/*
 * What is told about answers that people wrote who did not know the slips. Above each, what was done.
 */

const rows: readonly Row[] = [
	// Measured from the far end, in the order they were measured.
	{
		code: 'LR',
		id: 'rivet-row',
		given: { length: 4.625, endMargin: 0.375, greatestPitch: 0.75 },
		asked: ['count', 'pitch', 'positions'],
		typed: { positions: '4 1/4, 3.604, 2.958, 2.3125, 1.667, 1.021, 3/8' },
		told: { positions: 'order:reversed' }
	},
	// Two of the holes changed places.
	{
		code: 'LR',
		id: 'rivet-row',
		given: { length: 4.625, endMargin: 0.375, greatestPitch: 0.75 },
		asked: ['count', 'pitch', 'positions'],
		typed: { positions: '.375, 1.021, 2.3125, 1.667, 2.958, 3.604, 4.25' },
		told: { positions: 'order:mixed' }
	},
	// The flats begun at the short leg, and worked on with.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.1875, T: 0.08, legs: [1.125, 1.375, 0.75], angles: [90, 90] },
		asked: ['flats', 'width'],
		typed: { flats: '.4825, .840, .8575', width: '2.8806' },
		told: { flats: 'order:reversed', width: 'right' }
	},
	// The pitch typed for every hole, for every space, or once.
	...[Array(7).fill('.6458').join(', '), Array(6).fill('.6458').join(', '), '.646'].map(
		(positions): Row => ({
			code: 'LR',
			id: 'rivet-row',
			given: { length: 4.625, endMargin: 0.375, greatestPitch: 0.75 },
			asked: ['count', 'pitch', 'positions'],
			typed: { positions },
			told: { positions: 'other-step:pitch' }
		})
	),
	// Two rows down, and two columns to the side.
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '7075-T6', T: 0.04 },
		asked: ['radius'],
		typed: { radius: '.31' },
		told: { radius: 'twoRowsDown' }
	},
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '6061-T4', T: 0.125 },
		asked: ['radius'],
		typed: { radius: '.88' },
		told: { radius: 'twoColumnsRight' }
	},
	// The thinner sheet taken twice.
	{
		code: 'RL',
		id: 'rivet-length',
		given: { layers: [0.032, 0.063], D: 0.125 },
		asked: ['grip', 'length'],
		typed: { grip: '.064' },
		told: { grip: 'twoAsOne' }
	},
	// Two layers that lie on each other taken for one sheet.
	{
		code: 'RD',
		id: 'rivet-diameter-from-stack',
		given: { layers: [0.025, 0.032, 0.05] },
		asked: ['thickest', 'diameter'],
		typed: { thickest: '.057' },
		told: { thickest: 'twoAsOne' }
	},
	// 7/32 in, its dash number put over 16.
	{
		code: 'RD',
		id: 'rivet-diameter-from-stack',
		given: { layers: [0.071, 0.05] },
		asked: ['thickest', 'diameter'],
		typed: { diameter: '7/16' },
		told: { diameter: 'bothSheets or twiceUnstocked' }
	},
	// 5 D, for the edge and for the rows.
	{
		code: 'ED',
		id: 'edge-distance',
		given: { D: 0.125, head: 'protruding' },
		asked: ['least', 'preferred', 'greatest'],
		typed: { greatest: '5/8' },
		told: { greatest: 'fiveD' }
	},
	{
		code: 'LF',
		id: 'lap-width',
		given: { D: 0.125, head: 'protruding', rows: 2, pitch: 0.53125 },
		asked: ['rowsApart', 'width'],
		typed: { rowsApart: '.625', width: '1.125' },
		told: { rowsApart: 'fiveD', width: 'right' }
	},
	// Two of four rows counted.
	{
		code: 'PN',
		id: 'panel-rivets',
		given: { layers: [0.05, 0.05], rows: 4, count: 13 },
		asked: ['diameter', 'length', 'final', 'total'],
		typed: { total: '26' },
		told: { total: 'twoRows' }
	},
	// A flat between two bends left out, and the last one.
	{
		code: 'BW',
		id: 'developed-width',
		given: {
			R: 0.15625,
			T: 0.063,
			legs: [0.875, 0.9375, 1.1875, 0.9375, 0.875],
			angles: [90, 90, 90, 90]
		},
		asked: ['flats', 'allowances', 'width'],
		typed: { width: '3.7168' },
		told: { width: 'flatLeftOut' }
	},
	{
		code: 'BW',
		id: 'developed-width',
		given: {
			R: 0.15625,
			T: 0.063,
			legs: [0.875, 0.9375, 1.1875, 0.9375, 0.875],
			angles: [90, 90, 90, 90]
		},
		asked: ['flats', 'allowances', 'width'],
		typed: { width: '3.560' },
		told: { width: 'lastFlatLeftOut' }
	},
	// Rivets and inches both rounded up.
	{
		code: 'RB',
		id: 'rivets-each-side',
		given: { T: 0.036, D: 0.125, width: 4.5 },
		asked: ['eachSide'],
		typed: { eachSide: '30' },
		told: { eachSide: 'bothRoundedOnce' }
	},
	// No kerf, and rounded up.
	{
		code: 'CP',
		id: 'bar-pieces',
		given: { bar: 72, piece: 3.125, kerf: 0.125 },
		asked: ['count', 'remnant'],
		typed: { count: '24' },
		told: { count: 'kerfOff or upNoKerf' }
	},
	// The whole stock sheet, to a tenth of a pound.
	{
		code: 'CW',
		id: 'sheet-weight',
		given: { length: 60, width: 30, T: 0.04, alloy: '2014-T6' },
		asked: ['weight'],
		typed: { weight: '27.9' },
		told: { weight: 'sheet48by144' }
	},
	// Blanks laid across, where more go along.
	{
		code: 'CS',
		id: 'pieces-per-sheet',
		given: { sheetLength: 48, sheetWidth: 24, pieceLength: 8, pieceWidth: 5.25, kerf: 0.09375 },
		asked: ['count'],
		typed: { count: '18' },
		told: { count: 'acrossOnly' }
	},
	// Counts from 2 as the first.
	{
		code: 'RR',
		id: 'rivet-number-reading',
		given: { number: 'MS20426A5-10' },
		asked: ['head', 'alloy', 'diameter', 'length'],
		typed: { diameter: '1/8' },
		told: { diameter: 'diameterOneUnder' }
	},
	// Worked with another saw's kerf.
	{
		code: 'CP',
		id: 'bar-pieces',
		given: { bar: 72, piece: 2, kerf: 0.09375 },
		asked: ['count', 'used', 'remnant'],
		typed: { count: '33', used: '70 1/8', remnant: '1 7/8' },
		told: { count: 'kerfEighth', used: 'usedEighth', remnant: 'right' }
	},
	// K taken as 1, two decimals kept.
	{
		code: 'BG',
		id: 'sight-line',
		given: { leg: 0.9375, R: 0.125, T: 0.02, angle: 75 },
		asked: ['sightLine'],
		typed: { sightLine: '.92' },
		told: { sightLine: 'square' }
	},
	// R times T: one digit tells nothing.
	{
		code: 'BS',
		id: 'setback',
		given: { R: 0.125, T: 0.025, angle: 90 },
		asked: ['setback'],
		typed: { setback: '.003' },
		told: { setback: 'cannot tell' }
	},
	// The next 32nd, behind a radius read right.
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '7075-O', T: 0.071 },
		asked: ['radius', 'in32nds', 'bar'],
		typed: { radius: '.12', in32nds: '5/32' },
		told: { radius: 'right', in32nds: 'one32ndOver' }
	},
	// The next gauge, which is as much as a shorter sheet.
	{
		code: 'CW',
		id: 'sheet-weight',
		given: { length: 120, width: 48, T: 0.05, alloy: '7075-T6' },
		asked: ['weight'],
		typed: { weight: '23.27' },
		told: { weight: 'sheet48by96 or gaugeUnder' }
	},
	// Four edges.
	{
		code: 'LF',
		id: 'lap-width',
		given: { D: 0.15625, head: 'protruding', rows: 3, pitch: 0.84375 },
		asked: ['edge', 'rowsApart', 'width'],
		typed: { edge: '5/16', rowsApart: '.633', width: '2 33/64' },
		told: { edge: 'right', rowsApart: 'right', width: 'fourEdges' }
	},
	// The allowance doubled.
	{
		code: 'BA',
		id: 'bend-allowance',
		given: { R: 0.0625, T: 0.025, angle: 90 },
		asked: ['allowance'],
		typed: { allowance: '.2312' },
		told: { allowance: 'twiceAllowance' }
	},
	// One row of blanks too few.
	{
		code: 'CS',
		id: 'pieces-per-sheet',
		given: { sheetLength: 120, sheetWidth: 48, pieceLength: 12, pieceWidth: 8.25, kerf: 0.0625 },
		asked: ['count'],
		typed: { count: '36' },
		told: { count: 'rowTooFew' }
	},
	// 0.25D for the head.
	{
		code: 'HR',
		id: 'removal-drill',
		given: { layers: [0.025, 0.05], D: 0.15625 },
		asked: ['drill', 'depth'],
		typed: { drill: '1/8', depth: '.039' },
		told: { drill: 'right', depth: 'quarterD' }
	},
	// Begun a pitch behind the margin.
	{
		code: 'LR',
		id: 'rivet-row',
		given: { length: 7.125, endMargin: 0.375, greatestPitch: 1.125 },
		asked: ['count', 'pitch', 'positions'],
		typed: { positions: '1 7/16, 2 1/2, 3 9/16, 4 5/8, 5 11/16, 6 3/4, 7 13/16' },
		told: { positions: 'marginAndPitch' }
	},
	// Sixteenths written over 32.
	{
		code: 'RL',
		id: 'rivet-length',
		given: { layers: [0.04, 0.063], D: 0.1875 },
		asked: ['length'],
		typed: { length: '7/32' },
		told: { length: 'lengthOver32' }
	},
	// Only 16ths looked at.
	{
		code: 'HD',
		id: 'drill-size',
		given: { drill: 'H' },
		asked: ['size', 'under'],
		typed: { size: '.266', under: '1/4' },
		told: { size: 'right', under: 'under32nds or under16ths' }
	},
	// Right, as the shop writes it.
	{
		code: 'RN',
		id: 'rivet-number',
		given: { head: 'countersunk', alloy: '2117', D: 0.1875, length: 0.40625 },
		asked: ['headNumber', 'diameterDash', 'lengthDash', 'number'],
		typed: {
			headNumber: 'MS20426',
			diameterDash: '-6',
			lengthDash: 'dash 6.5',
			number: 'MS20426AD6-6-5'
		},
		told: { headNumber: 'right', diameterDash: 'right', lengthDash: 'right', number: 'right' }
	},
	// The same, read off a bag.
	{
		code: 'RR',
		id: 'rivet-number-reading',
		given: { number: 'MS20426A5-10' },
		asked: ['head', 'diameterDash', 'lengthDash'],
		typed: { head: 'csk', diameterDash: 'dash 5', lengthDash: '-10' },
		told: { head: 'right', diameterDash: 'right', lengthDash: 'right' }
	},
	// Right, named, and with hyphens.
	{
		code: 'CS',
		id: 'pieces-per-sheet',
		given: { sheetLength: 96, sheetWidth: 36, pieceLength: 16.5, pieceWidth: 8.25, kerf: 0 },
		asked: ['lengthwise'],
		typed: { lengthwise: '20 blanks' },
		told: { lengthwise: 'right' }
	},
	// Right, with hyphens and spaces.
	{
		code: 'LR',
		id: 'rivet-row',
		given: { length: 7.125, endMargin: 0.375, greatestPitch: 1.125 },
		asked: ['positions'],
		typed: { positions: '3/8 1-7/16 2-1/2 3-9/16 4-5/8 5-11/16 6-3/4' },
		told: { positions: 'right' }
	},
	// 7/32 in is over 3/32 in: it is only no size that the bins hold.
	{
		code: 'RD',
		id: 'rivet-diameter-from-stack',
		given: { layers: [0.071, 0.04] },
		asked: ['threeT', 'diameter'],
		typed: { threeT: '.213', diameter: '7/32' },
		told: { threeT: 'right', diameter: 'unstocked' }
	},
	// One short of whole: rounded up, and worked on with.
	{
		code: 'CS',
		id: 'pieces-per-sheet',
		given: { sheetLength: 96, sheetWidth: 48, pieceLength: 17.25, pieceWidth: 7.75, kerf: 0 },
		asked: ['alongLength', 'lengthwise'],
		typed: { alongLength: '6', lengthwise: '36' },
		told: { alongLength: 'nearestAlong', lengthwise: 'right' }
	},
	// The widths across in the place of the lengths along, and multiplied all the same.
	{
		code: 'CS',
		id: 'pieces-per-sheet',
		given: { sheetLength: 96, sheetWidth: 48, pieceLength: 17.25, pieceWidth: 7.75, kerf: 0 },
		asked: ['alongLength', 'lengthwise'],
		typed: { alongLength: '6', lengthwise: '30' },
		told: { alongLength: 'widthsAcrossForAlong', lengthwise: 'right' }
	},
	// No kerf, both ways of laying.
	{
		code: 'CS',
		id: 'pieces-per-sheet',
		given: { sheetLength: 48, sheetWidth: 24, pieceLength: 8, pieceWidth: 2.75, kerf: 0.09375 },
		asked: ['lengthwise', 'crosswise', 'count'],
		typed: { lengthwise: '48', crosswise: '51', count: '51' },
		told: {
			lengthwise: 'noKerfAlong',
			crosswise: 'noKerfTurnedAcross+noKerfTurnedAlong',
			count: 'right'
		}
	},
	// The skin, which lies between patch and rib.
	{
		code: 'RD',
		id: 'rivet-diameter-from-stack',
		given: { layers: [0.05, 0.032, 0.025] },
		asked: ['thickest', 'threeT', 'diameter'],
		typed: { thickest: '0.032', threeT: '0.096', diameter: '1/8' },
		told: { thickest: 'middle', threeT: 'right', diameter: 'right' }
	},
	// One size more than was wanted, and one that is not made.
	{
		code: 'RT',
		id: 'rivet-diameter',
		given: { thickest: 0.0591 },
		asked: ['threeT', 'diameter'],
		typed: { threeT: '0.1773', diameter: '7/32' },
		told: { threeT: 'right', diameter: 'unstocked' }
	},
	// The rivets of a row taken for its spaces.
	{
		code: 'PN',
		id: 'panel-rivets',
		given: { layers: [0.05, 0.05], rows: 4, count: 16 },
		asked: ['threeT', 'total'],
		typed: { threeT: '.150', total: '68' },
		told: { threeT: 'right', total: 'oneRivetMore' }
	},
	// A drill of one digit has none to change places with.
	{
		code: 'HD',
		id: 'drill-size',
		given: { drill: 'No. 5' },
		asked: ['size'],
		typed: { size: '.070' },
		told: { size: 'cannot tell' }
	},
	// The first digit of the drill misread, and its digits exchanged.
	{
		code: 'HD',
		id: 'drill-size',
		given: { drill: 'No. 12' },
		asked: ['size'],
		typed: { size: '.157' },
		told: { size: 'tenOn' }
	},
	{
		code: 'HD',
		id: 'drill-size',
		given: { drill: 'No. 12' },
		asked: ['size'],
		typed: { size: '.159' },
		told: { size: 'exchanged' }
	},
	// A number made up: so many pairs of slips lead near it that none is to be named.
	{
		code: 'BG',
		id: 'sight-line',
		given: { leg: 1.5, R: 0.25, T: 0.04, angle: 45 },
		asked: ['sightLine'],
		typed: { sightLine: '1.127' },
		told: { sightLine: 'cannot tell' }
	},
	// Another rivet's limits, all four of them: the first alone is a maximum of this rivet, too.
	{
		code: 'SC',
		id: 'shop-head-check',
		given: { D: 3 / 32, width: 0.124, height: 0.069 },
		asked: ['leastWidth', 'mostWidth', 'leastHeight', 'mostHeight', 'judgement'],
		typed: {
			leastWidth: '.156',
			mostWidth: '.2075',
			leastHeight: '.041',
			mostHeight: '.0825',
			judgement: 'drive more'
		},
		told: {
			leastWidth: 'misread:D',
			mostWidth: 'misread:D',
			leastHeight: 'misread:D',
			mostHeight: 'misread:D',
			judgement: 'right'
		}
	},
	// Of a word alone, what is true whatever was done.
	{
		code: 'SC',
		id: 'shop-head-check',
		given: { D: 3 / 16, width: 0.261, height: 0.113 },
		asked: ['judgement'],
		typed: { judgement: 'replace' },
		told: { judgement: 'replacedWithin' }
	},
	// The next rivet; nobody rounds one to a 16th.
	{
		code: 'RR',
		id: 'rivet-number-reading',
		given: { number: 'MS20470AD3-5' },
		asked: ['diameter'],
		typed: { diameter: '1/8' },
		told: { diameter: 'diameterOneOver' }
	},
	// Of one digit none was left out.
	{
		code: 'HP',
		id: 'drill-for-rivet-from-number',
		given: { number: 'AN426AD4-8' },
		asked: ['clearance'],
		typed: { clearance: '.005' },
		told: { clearance: 'cannot tell' }
	}
];

testTold(rows);
