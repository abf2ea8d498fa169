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
	}
];

testTold(rows);
