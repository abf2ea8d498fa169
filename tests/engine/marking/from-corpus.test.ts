import { type Row, testTold } from './told-rows.ts';

/*
 * What is told about answers in company: of the corpus of wrong answers, those that hold what
 * nothing else here does. Above each, what was done.
 */

const rows: readonly Row[] = [
	// Both factors typed for the sizes.
	{
		code: 'ED',
		id: 'edge-distance',
		given: { D: 0.25, head: 'countersunk' },
		asked: ['least', 'greatest'],
		typed: { least: '2.5', greatest: '4' },
		told: { least: 'factor', greatest: 'factor' }
	},
	// The diameter of the bar.
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '6061-T4', T: 0.016 },
		asked: ['radius', 'bar'],
		typed: { bar: '1/8' },
		told: { bar: 'upToEighth or barDiameter' }
	},
	// K to one decimal.
	{
		code: 'BS',
		id: 'setback',
		given: { R: 0.25, T: 0.063, angle: 120 },
		asked: ['setback'],
		typed: { setback: '.5321' },
		told: { setback: 'rounding:way' }
	},
	// Least and most changed places, judged right.
	{
		code: 'SC',
		id: 'shop-head-check',
		given: { D: 0.1875, width: 0.249, height: 0.137 },
		asked: ['leastWidth', 'mostWidth', 'judgement'],
		typed: { leastWidth: '.3112', mostWidth: '.2344', judgement: 'drive more' },
		told: {
			leastWidth: 'other-step:mostWidth',
			mostWidth: 'other-step:leastWidth',
			judgement: 'right'
		}
	},
	// Two mistakes: between the legs, and R alone.
	{
		code: 'BL',
		id: 'setback-from-legs',
		given: { R: 0.09375, T: 0.05, betweenLegs: 70 },
		asked: ['setback'],
		typed: { setback: '.0656' },
		told: { setback: 'legs+noT' }
	},
	// Two mistakes: R for the setback, no sheet in the allowance.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.09375, T: 0.02, legs: [1, 2.25], angles: [90] },
		asked: ['width'],
		typed: { width: '3.2096' },
		told: { width: 'allowNoT+noT' }
	},
	// The hundredths read as 64ths.
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '6061-T4', T: 0.016 },
		asked: ['radius', 'bar'],
		typed: { radius: '3/64' },
		told: { radius: 'in64ths' }
	},
	// The radius as it stands.
	{
		code: 'BS',
		id: 'setback',
		given: { R: 0.0625, T: 0.05, angle: 90 },
		asked: ['setback'],
		typed: { setback: '1/16' },
		told: { setback: 'noT' }
	},
	// The leg as it is: the mold line.
	{
		code: 'BG',
		id: 'sight-line',
		given: { leg: 1.25, R: 0.25, T: 0.063, angle: 90 },
		asked: ['sightLine'],
		typed: { sightLine: '1 1/4' },
		told: { sightLine: 'noT or moldLine' }
	},
	// K left out of the setback.
	{
		code: 'BE',
		id: 'sight-line-leg',
		given: { R: 0.125, T: 0.063, angle: 60, tangentLine: 2.32 },
		asked: ['setback', 'leg'],
		typed: { leg: '2.508' },
		told: { leg: 'square' }
	},
	// Two setbacks from every leg, also at the ends.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.15625, T: 0.025, legs: [1.1875, 2.25], angles: [120] },
		asked: ['flats', 'allowances', 'width'],
		typed: { flats: '.5596, 1.6221' },
		told: { flats: 'twice' }
	},
	// K for 1 degree more, from the chart, and a setback to four places: off by little more than is allowed.
	{
		code: 'BS',
		id: 'setback',
		given: { R: 0.09375, T: 0.025, angle: 60 },
		asked: ['setback'],
		typed: { setback: '.0699' },
		told: { setback: 'rowAfter' }
	},
	// K for the angle between the legs as the chart prints it, to four figures: 1.303.
	{
		code: 'BE',
		id: 'sight-line-leg',
		given: { R: 0.15625, T: 0.04, angle: 75, tangentLine: 1.89 },
		asked: ['leg'],
		typed: { leg: '2.1457' },
		told: { leg: 'legs' }
	},
	// Count right, then the greatest pitch.
	{
		code: 'LR',
		id: 'rivet-row',
		given: { length: 5.875, endMargin: 0.28125, greatestPitch: 0.375 },
		asked: ['count', 'pitch'],
		typed: { count: '16', pitch: '.375' },
		told: { count: 'right', pitch: 'pitchNotDivided or pitchToSixteenths' }
	},
	// Stops at 3T and types that.
	{
		code: 'RT',
		id: 'rivet-diameter',
		given: { thickest: 0.051 },
		asked: ['threeT', 'diameter'],
		typed: { diameter: '.153' },
		told: { diameter: 'notStocked' }
	},
	// Edge and rows each in the field of the other.
	{
		code: 'LF',
		id: 'lap-width',
		given: { D: 0.09375, head: 'countersunk', rows: 3, pitch: 0.328125 },
		asked: ['edge', 'rowsApart', 'width'],
		typed: { edge: '.2461', rowsApart: '15/64', width: '.9609' },
		told: { edge: 'other-step:byPitch', rowsApart: 'right', width: 'right' }
	},
	// The radius in place of the flat.
	{
		code: 'BE',
		id: 'sight-line-leg',
		given: { R: 0.25, T: 0.063, angle: 75, tangentLine: 1.26 },
		asked: ['setback', 'leg'],
		typed: { leg: '1/4' },
		told: { leg: 'other-step:R' }
	},
	// The size of the part, no trim.
	{
		code: 'CB',
		id: 'blank-size',
		given: {
			finishedLength: 11.125,
			finishedWidth: 3.75,
			trimmedEnds: 2,
			endTrim: 0.03125,
			trimmedEdges: 2,
			edgeTrim: 0.03125
		},
		asked: ['blankLength', 'blankWidth'],
		typed: { blankLength: '11 1/8', blankWidth: '3 3/4' },
		told: { blankLength: 'noEndTrim', blankWidth: 'noEdgeTrim' }
	},
	// The preferred one: 1/16 in more.
	{
		code: 'ED',
		id: 'edge-distance-by-number',
		given: { number: 'MS20426AD3-4', head: 'countersunk' },
		asked: ['least', 'preferred', 'greatest'],
		typed: { least: '19/64' },
		told: { least: 'sixteenthAdded' }
	},
	// 2D between the rows.
	{
		code: 'LF',
		id: 'lap-width',
		given: { D: 0.125, head: 'protruding', rows: 3, pitch: 0.53125 },
		asked: ['edge', 'rowsApart', 'width'],
		typed: { width: '1.000' },
		told: { width: 'edgeForRows' }
	},
	// Angle right, then K as 1, carried on.
	{
		code: 'BL',
		id: 'setback-from-legs',
		given: { R: 0.0625, T: 0.05, betweenLegs: 98 },
		asked: ['angle', 'K', 'setback'],
		typed: { angle: '82', K: '1', setback: '.1125' },
		told: { angle: 'right', K: 'K.square or rounding:end', setback: 'right' }
	},
	// Width right, height as if half of it.
	{
		code: 'SH',
		id: 'shop-head-from-number',
		given: { number: 'MS20470AD4-6' },
		asked: ['diameter', 'width', 'height'],
		typed: { width: '.1875', height: '.0938' },
		told: { width: 'right', height: 'halfOfWidth' }
	},
	// 0.003 in, as a rule says.
	{
		code: 'HP',
		id: 'drill-for-rivet-from-number',
		given: { number: 'AN426AD3-4' },
		asked: ['pilot', 'final', 'clearance'],
		typed: { clearance: '.003' },
		told: { clearance: 'ruleOfThumb' }
	},
	// Two sheets off the legs at each bend.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.15625, T: 0.025, legs: [0.6875, 1.5, 0.6875], angles: [90, 90] },
		asked: ['width'],
		typed: { width: '2.775' },
		told: { width: 'noT or lessTwoT' }
	},
	// The others right, one side only.
	{
		code: 'RB',
		id: 'rivets-each-side',
		given: { T: 0.036, D: 0.125, width: 4.5 },
		asked: ['perInch', 'eachSide', 'total'],
		typed: { perInch: '5.6', eachSide: '26', total: '26' },
		told: { perInch: 'right', eachSide: 'right', total: 'oneSide' }
	},
	// To the nearest sixteenth of the scale.
	{
		code: 'LR',
		id: 'rivet-row',
		given: { length: 5.875, endMargin: 0.375, greatestPitch: 0.625 },
		asked: ['count', 'pitch'],
		typed: { pitch: '9/16' },
		told: { pitch: 'pitchToSixteenths' }
	},
	// Two decimals are enough.
	{
		code: 'HD',
		id: 'drill-size',
		given: { drill: 'No. 12' },
		asked: ['size', 'under'],
		typed: { size: '.19' },
		told: { size: 'rounding:end or other-step:under' }
	},
	// To the nearest sixteenth of the scale.
	{
		code: 'LR',
		id: 'rivet-row',
		given: { length: 5.125, endMargin: 0.390625, greatestPitch: 1.09375 },
		asked: ['count', 'pitch', 'positions'],
		typed: { pitch: '1 1/16' },
		told: { pitch: 'pitchToSixteenths' }
	},
	// The nominal size.
	{
		code: 'PN',
		id: 'panel-two-stacks',
		given: {
			layers: [0.032, 0.02, 0.032],
			layersB: [0.02, 0.032],
			head: 'protruding',
			rowLength: 9.5,
			greatestPitch: 1,
			rows: 2
		},
		asked: [
			'diameter',
			'length',
			'lengthB',
			'pilot',
			'final',
			'preferred',
			'count',
			'pitch',
			'total'
		],
		typed: { diameter: '-4', length: '5/16', lengthB: '1/4', pilot: '1/8', final: '1/8' },
		told: { diameter: 'right', length: 'right', lengthB: 'right', pilot: 'right', final: 'nominal' }
	},
	// 2.5 D, the recommended one.
	{
		code: 'ED',
		id: 'edge-distance-by-number',
		given: { number: 'MS20426AD3-4', head: 'countersunk' },
		asked: ['least', 'preferred', 'greatest'],
		typed: { preferred: '15/64' },
		told: { preferred: 'nothingAdded or flushForPreferred' }
	},
	// The length at A taken at B too.
	{
		code: 'PN',
		id: 'panel-two-stacks',
		given: {
			layers: [0.032, 0.032, 0.025],
			layersB: [0.032, 0.025],
			head: 'protruding',
			rowLength: 23,
			greatestPitch: 0.875,
			rows: 4
		},
		asked: [
			'diameter',
			'length',
			'lengthB',
			'pilot',
			'final',
			'preferred',
			'count',
			'pitch',
			'total'
		],
		typed: { diameter: '-4', length: '5/16', lengthB: '-5' },
		told: { diameter: 'right', length: 'right', lengthB: 'other-step:length' }
	},
	// Two mistakes: R alone, and the sheet left out.
	{
		code: 'BW',
		id: 'developed-width',
		given: {
			R: 0.09375,
			T: 0.02,
			legs: [0.6875, 1.125, 1.1875, 1.125, 0.6875],
			angles: [90, 90, 90, 90]
		},
		asked: ['flats', 'allowances', 'width'],
		typed: {
			flats: '.5938, .9375, 1.000, .9375, .5938',
			allowances: '.1471, .1471, .1471, .1471',
			width: '4.6508'
		},
		told: { flats: 'noT', allowances: 'allowNoT', width: 'right' }
	},
	// No trim at all.
	{
		code: 'CB',
		id: 'blank-size',
		given: {
			finishedLength: 10,
			finishedWidth: 4.25,
			trimmedEnds: 1,
			endTrim: 0.25,
			trimmedEdges: 2,
			edgeTrim: 0.25
		},
		asked: ['blankLength', 'blankWidth'],
		typed: { blankLength: '10' },
		told: { blankLength: 'noEndTrim' }
	},
	// Half of it: takes the chart for a diameter.
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '5052-H32', T: 0.016 },
		asked: ['radius', 'bar'],
		typed: { bar: '1/32' },
		told: { bar: 'noBar' }
	},
	// No table has a drill for so large a rivet, and what does not hang on the drill is right.
	{
		code: 'PN',
		id: 'panel-rivets',
		given: { layers: [0.05, 0.05], rows: 3, count: 14 },
		asked: ['diameter', 'length', 'final', 'total'],
		typed: { diameter: '5/16', length: '5/8', final: 'F', total: '42' },
		told: {
			diameter: 'wholeStack or in16ths',
			length: 'right',
			final: 'cannot tell',
			total: 'right'
		}
	},
	// The doubler left out of the stack of a panel, and worked on with that.
	{
		code: 'PN',
		id: 'panel-two-stacks',
		given: {
			layers: [0.05, 0.032, 0.032],
			layersB: [0.032, 0.032],
			head: 'protruding',
			rowLength: 22.25,
			greatestPitch: 0.75,
			rows: 2
		},
		asked: ['diameter', 'length', 'lengthB', 'final', 'total'],
		typed: { diameter: '-4', length: '5/16', lengthB: '5/16', final: '#30', total: '30' },
		told: {
			diameter: 'outerLeftOut or twoT or diameter.down',
			length: 'right',
			lengthB: 'right',
			final: 'right',
			total: 'oneRow'
		}
	}
];

testTold(rows);
