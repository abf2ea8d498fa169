import type { Value } from '../../../src/lib/engine/quantity/value.ts';
import type { OutcomeRow } from './outcome-row.ts';

/*
 * FAA-H-8083-31B, ch. 4, pp. 4-34 and 4-35: end margins first, equal spaces between them. On 4 in
 * with margins of 1/4 the run is 3.5; at most 1 in apart that is 4 spaces of 0.875, so 5 rivets.
 */
const given = { length: 4, endMargin: 0.25, greatestPitch: 1 };

function row(key: string, entered: Value, name: string, says: string): OutcomeRow {
	return { given, key, entered, case: name, says };
}

export const rows: readonly OutcomeRow[] = [
	row('count', 0, 'noRow', 'A row takes two rivets or more, in whole numbers.'),
	row('count', 1, 'noRow', 'A row takes two rivets or more, in whole numbers.'),
	row('count', 4.5, 'noRow', 'A row takes two rivets or more, in whole numbers.'),
	// 3.5 / 3 = 1.1667; 3.5 / 1 = 3.5.
	row('count', 4, 'wide', '4 rivets stand 1.1667 in apart, wider than the maximum pitch, 1 in.'),
	row('count', 2, 'wide', '2 rivets stand 3.500 in apart, wider than the maximum pitch, 1 in.'),
	row(
		'count',
		5,
		'right',
		'5 rivets stand 0.875 in apart: the fewest that keep within the maximum pitch.'
	),
	row(
		'count',
		6,
		'more',
		'6 rivets stand 0.700 in apart: fewer still keep within the maximum pitch.'
	),
	// Spaces are one less than rivets.
	row('spaces', 3, 'wide', '4 rivets stand 1.1667 in apart, wider than the maximum pitch, 1 in.'),
	row(
		'spaces',
		4,
		'right',
		'5 rivets stand 0.875 in apart: the fewest that keep within the maximum pitch.'
	),
	row(
		'spaces',
		5,
		'more',
		'6 rivets stand 0.700 in apart: fewer still keep within the maximum pitch.'
	),

	row('pitch', 0, 'noStep', 'A pitch of 0.000 in makes no row.'),
	// The last hole falls on 0.25 + 4 pitches.
	row(
		'pitch',
		0.875,
		'right',
		'Stepped off at 0.875 in, the last hole stands 0.250 in from the far end.'
	),
	row(
		'pitch',
		0.876,
		'right',
		'Stepped off at 0.876 in, the last hole stands 0.246 in from the far end.'
	),
	row(
		'pitch',
		0.874,
		'right',
		'Stepped off at 0.874 in, the last hole stands 0.254 in from the far end.'
	),
	row(
		'pitch',
		0.877,
		'missed',
		'Stepped off at 0.877 in, the last hole stands 0.242 in from the far end, not 1/4 in.'
	),
	row(
		'pitch',
		0.7,
		'missed',
		'Stepped off at 0.700 in, the last hole stands 0.950 in from the far end, not 1/4 in.'
	),
	row('pitch', 0.9375, 'off', 'Stepped off at 0.9375 in, the last hole is off the piece.'),
	row('pitch', 1, 'off', 'Stepped off at 1.000 in, the last hole is off the piece.'),

	row('positions', [0.25, 2, 3.75], 'fewer', '3 holes are too few for this row.'),
	row(
		'positions',
		[0.25, 0.95, 1.65, 2.35, 3.05, 3.75],
		'more',
		'6 holes are too many: fewer still keep within the maximum pitch.'
	),
	row(
		'positions',
		[0.25, 1.125, 2, 2.875, 3.75],
		'right',
		'The first hole stands 0.250 in from the reference edge, the last one 0.250 in from the far end.'
	),
	// Each within 1/64 in.
	row(
		'positions',
		[0.24, 1.125, 2.01, 2.875, 3.76],
		'right',
		'The first hole stands 0.240 in from the reference edge, the last one 0.240 in from the far end.'
	),
	// Measured from the first hole, and begun a pitch from the edge: 5 × 0.875 is past 4 in.
	row(
		'positions',
		[0, 0.875, 1.75, 2.625, 3.5],
		'off',
		'A hole centre lies on an end of the piece, or off it.'
	),
	row(
		'positions',
		[0.875, 1.75, 2.625, 3.5, 4.375],
		'off',
		'A hole centre lies on an end of the piece, or off it.'
	),
	row(
		'positions',
		[0.25, 1, 2, 3.05, 3.75],
		'wide',
		'A space of 1.050 in is wider than the maximum pitch, 1 in.'
	),
	row(
		'positions',
		[0.25, 1.125, 2, 2.875, 3.7],
		'margins',
		'The first hole stands 0.250 in from the reference edge, the last one 0.300 in from the far end; 1/4 in is wanted at both.'
	),
	row(
		'positions',
		[0.3, 1.125, 2, 2.875, 3.75],
		'margins',
		'The first hole stands 0.300 in from the reference edge, the last one 0.250 in from the far end; 1/4 in is wanted at both.'
	),
	// 1.1875 − 0.25 and 2.0625 − 1.125; a space 1/64 over the maximum pitch is still within the rule.
	row(
		'positions',
		[0.25, 1.1875, 2, 2.875, 3.75],
		'uneven',
		'The spaces are not equal: the widest is 0.9375 in.'
	),
	row(
		'positions',
		[0.25, 1.26, 2, 2.875, 3.75],
		'uneven',
		'The spaces are not equal: the widest is 1.010 in.'
	),
	{
		// A run of 3.5 at most 0.9 apart is 4 spaces of 0.875 too; 0.92 leaves 4 − 0.25 − 3.68 = 0.07.
		given: { ...given, greatestPitch: 0.9 },
		key: 'pitch',
		entered: 0.92,
		case: 'wide',
		says: '0.920 in is wider than the maximum pitch, and the last hole stands 0.070 in from the far end, not 1/4 in.'
	}
];
