import type { Value } from '../../../src/lib/engine/quantity/value.ts';
import type { OutcomeRow } from './outcome-row.ts';

/*
 * Legs of 1 and 2 in, square, 0.040 in sheet over a 1/8 in bar: with a setback of 0.165 in the
 * flats are 0.835 and 1.835 in, the bend takes (0.01743 x 0.125 + 0.0078 x 0.040) x 90 = 0.2241675
 * in, and the blank is 2.8941675 in wide.
 */
const angle = { R: 0.125, T: 0.04, legs: [1, 2], angles: [90] };

/** A second bend behind it: flats of 0.835, 1.670 and 0.835 in. */
const channel = { R: 0.125, T: 0.04, legs: [1, 2, 1], angles: [90, 90] };

function row(key: string, entered: Value, one: string, says: string, given = angle): OutcomeRow {
	return { given, key, entered, case: one, says: `Bent up, ${says}.` };
}

const most = ', and no other leg is off by more';
const fits = 'every leg comes out to its mold lines';

export const rows: readonly OutcomeRow[] = [
	row('flats', [0.835, 1.835], 'fits', fits),
	// Flats are laid out with a scale: 1/64 in.
	row('flats', [0.850625, 1.819375], 'fits', fits),
	row('flats', [0.835, 1.851], 'hairLong', `leg 2 comes out less than 1/16 in too long${most}`),
	row('flats', [0.819, 1.835], 'hairShort', `leg 1 comes out less than 1/16 in too short${most}`),
	// No setbacks taken off: both legs are 0.165 in too long.
	row('flats', [1, 2], 'long', `leg 1 comes out about 3/16 in too long${most}`),
	// 0.01 in too long, and 0.1 in too short.
	row('flats', [0.845, 1.735], 'short', `leg 2 comes out about 1/8 in too short${most}`),
	row('allowances', [0.2241675], 'fits', fits),
	row('allowances', [0.2271675], 'fits', fits),
	row('allowances', [0.228], 'hairLong', 'the last leg comes out less than 1/16 in too long'),
	row('allowances', [0.33], 'long', 'the last leg comes out about 1/8 in too long'),
	row('allowances', [0.22], 'hairShort', 'the last leg comes out less than 1/16 in too short'),
	// Setbacks taken for the allowances: 0.0592 in too little at a bend, twice that at two.
	row('allowances', [0.165], 'short', 'the last leg comes out about 1/16 in too short'),
	row(
		'allowances',
		[0.165, 0.165],
		'short',
		'the last leg comes out about 1/8 in too short',
		channel
	),
	// One too much and one too little by 0.004 in: the sum is right, the answer is not.
	row(
		'allowances',
		[0.2281675, 0.2201675],
		'hairLong',
		'the last leg comes out less than 1/16 in too long',
		channel
	),
	// A blank may be 1/64 in off.
	row('width', 2.8941675, 'fits', fits),
	row('width', 2.9097925, 'fits', fits),
	row('width', 2.8785425, 'fits', fits),
	row('width', 2.91, 'hairLong', 'the last leg comes out less than 1/16 in too long'),
	// The mold line dimensions added up: 0.1058 in too wide.
	row('width', 3, 'long', 'the last leg comes out about 1/8 in too long'),
	row('width', 2.878, 'hairShort', 'the last leg comes out less than 1/16 in too short'),
	// The flats alone.
	row('width', 2.67, 'short', 'the last leg comes out about 1/4 in too short')
];
