import { describe, expect, test } from 'vitest';
import { loadMethods } from '../../../src/lib/engine/families/catalogue.ts';
import type { Values } from '../../../src/lib/engine/solver/compiled.ts';
import { toldOf } from '../wrong-answers/told.ts';
import { taskOf } from './typed-answers.ts';

/*
 * What people who tried the program were told, and what they should have been: a case for each
 * cause that was put right. Given by method and givens, so that a change of the draws leaves them.
 */
const methods = new Map((await loadMethods()).map((method) => [method.id, method]));

describe('told at the bench', () => {
	test.each<[string, string, Values, string, string, string]>([
		// The first values of a list, all right.
		[
			'LR',
			'rivet-row',
			{ length: 4.125, endMargin: 0.234375, greatestPitch: 0.65625 },
			'positions',
			'.2344, .8438, 1.4531, 2.0625, 2.6719, 3.2813',
			'unread'
		],
		[
			'BW',
			'developed-width',
			{ R: 0.25, T: 0.09, legs: [0.875, 1.9375], angles: [45] },
			'flats',
			'.1408',
			'other-step:taken'
		],
		// Four digits that a slip leads to, before rounding on the way.
		[
			'CW',
			'sheet-weight',
			{ length: 144, width: 48, T: 0.08, alloy: '2014-T6' },
			'weight',
			'55.30',
			'densityOf2024'
		],
		[
			'CW',
			'sheet-weight',
			{ length: 44, width: 39, T: 0.071, alloy: '5052-H32' },
			'weight',
			'12.18',
			'densityOf2024'
		],
		// Four digits of a large number are enough.
		[
			'CW',
			'sheet-weight',
			{ length: 53, width: 46, T: 0.071, alloy: '1100-H14' },
			'weight',
			'238.9',
			'noThickness'
		],
		// A shear has no kerf to leave out: the blanks are turned, and that is all.
		[
			'CS',
			'pieces-per-sheet',
			{ sheetLength: 48, sheetWidth: 36, pieceLength: 10, pieceWidth: 5, kerf: 0 },
			'lengthwise',
			'27',
			'turned'
		],
		// A value off the chart, for what it is multiplied by.
		['BS', 'setback', { R: 0.15625, T: 0.04, angle: 105 }, 'setback', '1.303', 'other-step:K'],
		// Two steps with equal values are one.
		[
			'CB',
			'blank-size',
			{
				finishedLength: 18.875,
				finishedWidth: 4.625,
				trimmedEnds: 2,
				endTrim: 1,
				trimmedEdges: 2,
				edgeTrim: 1
			},
			'blankLength',
			'2',
			'other-step:addedLength'
		],
		// A slip in the step itself beside the result of another.
		[
			'LF',
			'lap-width',
			{ D: 0.09375, head: 'protruding', rows: 3, pitch: 0.5 },
			'edge',
			'3/8',
			'greatestForLeast'
		],
		// The factor stands among the givens too, as a count.
		[
			'LF',
			'lap-width',
			{ D: 0.15625, head: 'protruding', rows: 2, pitch: 0.75 },
			'edge',
			'2',
			'factor'
		],
		// The maximum for the minimum; what is preferred is the next larger rivet's as well.
		['ED', 'edge-distance', { D: 0.1875, head: 'protruding' }, 'least', '3/4', 'greatestForLeast'],
		['ED', 'edge-distance', { D: 0.1875, head: 'countersunk' }, 'least', '3/4', 'greatestForLeast'],
		['ED', 'edge-distance', { D: 0.1875, head: 'protruding' }, 'least', '7/16', 'sixteenthAdded'],
		// K of the angle between the legs as the chart prints it, cut off.
		['BS', 'setback', { R: 0.125, T: 0.02, angle: 93 }, 'K', '.9489', 'legs'],
		[
			'SC',
			'shop-head-check',
			{ D: 0.09375, width: 0.137, height: 0.023 },
			'mostWidth',
			'.311',
			'dashForMost'
		],
		[
			'SC',
			'shop-head-check',
			{ D: 0.09375, width: 0.137, height: 0.023 },
			'mostHeight',
			'.124',
			'dashForHigh'
		],
		// The 32nd below 3T, which no bin holds.
		[
			'RD',
			'rivet-diameter-from-stack',
			{ layers: [0.04, 0.08] },
			'diameter',
			'7/32',
			'unstockedBelow'
		],
		// The sheet that the piece was cut from.
		[
			'CW',
			'sheet-weight',
			{ length: 54, width: 42, T: 0.032, alloy: '3003-H14' },
			'weight',
			'14.6',
			'sheet48by96'
		],
		// One act: the thickness term left out, or the arc of the inside face.
		['BA', 'bend-allowance', { R: 0.09375, T: 0.025, angle: 90 }, 'allowance', '.147', 'noT'],
		[
			'BA',
			'bend-allowance',
			{ R: 0.09375, T: 0.025, angle: 90 },
			'allowance',
			'.1471',
			'noneForThickness'
		],
		[
			'BA',
			'bend-allowance',
			{ R: 0.125, T: 0.02, angle: 60 },
			'forRadius',
			'.196',
			'squareForRadius'
		],
		[
			'BA',
			'bend-allowance',
			{ R: 0.125, T: 0.02, angle: 60 },
			'forThickness',
			'.014',
			'squareForThickness'
		],
		// A bend more than there is, and not the sine that comes near it.
		[
			'BW',
			'developed-width',
			{ R: 0.0625, T: 0.05, legs: [0.8125, 2.375, 0.8125], angles: [90, 90] },
			'width',
			'3.949',
			'allowancePerLeg'
		],
		['BR', 'least-bend-radius', { alloy: '2024-O', T: 0.071 }, 'radius', '.25', 'harder'],
		[
			'LR',
			'rivet-row',
			{ length: 4.625, endMargin: 0.375, greatestPitch: 0.875 },
			'positions',
			'.375, .775, 1.55, 2.325, 3.1, 3.875',
			'marginOnce'
		],
		[
			'LR',
			'rivet-row',
			{ length: 4.625, endMargin: 0.375, greatestPitch: 0.875 },
			'positions',
			'.375, .75, 1.525, 2.3, 3.075, 3.85',
			'marginTwice'
		],
		// The size itself where a number is asked for, and the number where the size is.
		[
			'RN',
			'rivet-number',
			{ head: 'countersunk', alloy: '2117', D: 0.1875, length: 0.75 },
			'lengthDash',
			'3/4',
			'lengthInInches'
		],
		[
			'RR',
			'rivet-number-reading',
			{ number: 'MS20426AD3-7' },
			'diameter',
			'3',
			'unit:thirty-seconds'
		],
		['RR', 'rivet-number-reading', { number: 'MS20426AD3-7' }, 'length', '7', 'unit:sixteenths'],
		// What stands on the paper as a size is no factor.
		[
			'LF',
			'lap-width',
			{ D: 0.15625, head: 'protruding', rows: 2, pitch: 0.75 },
			'rowsApart',
			'3/4',
			'fullPitch'
		],
		// A number that a slip leads to, and rounding as well.
		[
			'LF',
			'lap-width',
			{ D: 0.25, head: 'countersunk', rows: 2, pitch: 1.125 },
			'rowsApart',
			'1',
			'greatestEdge or rounding:end'
		],
		[
			'BW',
			'developed-width',
			{ R: 0.125, T: 0.05, legs: [1.4375, 1.75], angles: [45] },
			'width',
			'3 3/16',
			'sum or rounding:end'
		],
		[
			'BS',
			'setback',
			{ R: 0.125, T: 0.032, angle: 53 },
			'setback',
			'.08',
			'rowAfter or rounding:end'
		],
		['BS', 'setback', { R: 0.125, T: 0.032, angle: 53 }, 'setback', '1/8', 'radiusAlone'],
		// Half-way between two lines of a rule, before a slip that only comes near.
		['SH', 'shop-head', { D: 0.1875 }, 'width', '5/16', 'rounding:end'],
		['SH', 'shop-head', { D: 0.09375 }, 'width', '5/32', 'rounding:end'],
		// Digits: a seldom slip fits as well; over the point; in a part number; a slip before a point.
		[
			'BL',
			'setback-from-legs',
			{ R: 0.25, T: 0.071, betweenLegs: 49 },
			'angle',
			'311',
			'from360 or digits:swapped'
		],
		['HD', 'drill-size', { drill: 'No. 24' }, 'size', '.125', 'digits:swapped or rounding:end'],
		[
			'RB',
			'rivets-each-side',
			{ T: 0.063, D: 0.1875, width: 15 },
			'perInch',
			'5.4',
			'digits:swapped'
		],
		[
			'RN',
			'rivet-number',
			{ head: 'countersunk', alloy: '2024', D: 0.15625, length: 0.75 },
			'number',
			'MS20462DD5-12',
			'digits:swapped'
		],
		[
			'BG',
			'sight-line',
			{ leg: 1.625, R: 0.25, T: 0.016, angle: 90 },
			'sightLine',
			'.016',
			'setbackLessR'
		],
		// A slip that leads nowhere further on.
		['BR', 'least-bend-radius', { alloy: '7178-O', T: 0.09 }, 'radius', '19/64', 'in64ths'],
		['HP', 'drill-for-rivet', { D: 0.25 }, 'pilot', '3/16', 'lastForPilot'],
		// Nothing is the same in every unit.
		['HP', 'drill-for-rivet', { D: 0.25 }, 'clearance', '0', 'nominal or drillUnder']
	])('%s %s %j, %s %s: %s', async (code, id, given, key, text, told) => {
		const method = methods.get(id);
		if (!method) throw new Error(`no method: ${id}`);
		const all = await toldOf(await taskOf(code, method, given, [key]), { [key]: text });
		const one = all?.get(key);
		const causes = one?.kind === 'offered' ? one.causes : one?.kind === 'named' ? [one.cause] : [];
		expect(causes.map(([name]) => name).join(' or ') || one?.kind).toBe(told);
	});
});
