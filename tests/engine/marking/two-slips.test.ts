import { type Row, testTold } from './told-rows.ts';

/* Two slips, or a slip and the number typed in millimetres as if they were inches. Above each, what was done. */

const rows: readonly Row[] = [
	// Two digits of .01743 changed places: .3370 in, which is 8.56 mm.
	{
		code: 'BA',
		id: 'bend-allowance',
		given: { R: 0.15625, T: 0.025, angle: 135 },
		asked: ['allowance'],
		typed: { allowance: '8.56' },
		told: { allowance: 'mm-for-inch+radiusDigits' }
	},
	// .6 of 1/4 in, .15 in, is 3.81 mm.
	{
		code: 'SH',
		id: 'shop-head-from-number',
		given: { number: 'MS20470DD8-10' },
		asked: ['height'],
		typed: { height: '3.81' },
		told: { height: 'mm-for-inch+otherHeight' }
	},
	// 62.67 mm are right. With K of the row after they are 62.71, and 2.469 in is as good as 2.4675.
	{
		code: 'BE',
		id: 'sight-line-leg',
		given: { R: 0.0625, T: 0.025, angle: 90, tangentLine: 2.38 },
		asked: ['leg'],
		typed: { leg: '62.71' },
		told: { leg: 'cannot tell' }
	},
	// Nought is nought in every unit; what stands before it is right.
	{
		code: 'HD',
		id: 'drill-size',
		given: { drill: 'No. 10' },
		asked: ['size', 'fraction', 'under'],
		typed: { size: '.1935', fraction: '13/64', under: '.0000' },
		told: { size: 'right', fraction: 'right', under: 'cannot tell' }
	},
	// Half a diameter for the shank's part, or one of two mistakes met more often, and a 32nd for a sixteenth.
	{
		code: 'RL',
		id: 'rivet-length',
		given: { layers: [0.063, 0.05, 0.05], D: 0.1875 },
		asked: ['length'],
		typed: { length: '.1563' },
		told: { length: 'headHigh+lengthOver32 or lengthOver32+noGrip or halfD+lengthOver32' }
	},
	// From nowhere, and typed again.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.125, T: 0.063, legs: [0.6875, 1.3125], angles: [90] },
		asked: ['taken', 'allowances'],
		typed: { taken: '.7777', allowances: '.7777' },
		told: { taken: 'cannot tell', allowances: 'other-step:taken' }
	}
];

testTold(rows);
