import type { OutcomeRow } from './outcome-row.ts';

/*
 * FAA-H-8083-31B, ch. 4, p. 4-34, Figs. 4-79 and 4-81. Protruding 1/8 rivets in two rows: edge
 * distance 2 D = 1/4, never closer than 2.5 D = 5/16. By a pitch of 3/4 the rows stand 9/16 apart
 * and the lap is 1/4 + 9/16 + 1/4 = 1 1/16 = 1.0625 wide.
 */
const byPitch = { D: 1 / 8, head: 'protruding', rows: 2, pitch: 0.75 };
/** 75 percent of 3/8 is 9/32, under 5/16: three rows stand 5/16 apart, the lap is 1.125 wide. */
const byClosest = { D: 1 / 8, head: 'protruding', rows: 3, pitch: 0.375 };

function wide(entered: number, name: string, says: string): OutcomeRow {
	return { given: byPitch, key: 'width', entered, case: name, says };
}

function apart(entered: number, name: string, says: string, given = byPitch): OutcomeRow {
	return { given, key: 'rowsApart', entered, case: name, says };
}

export const rows: readonly OutcomeRow[] = [
	wide(0, 'off', 'A lap 0 in wide has no metal outside its last row.'),
	// 1/4 + 9/16: the lap ends at the last row.
	wide(0.8125, 'off', 'A lap 13/16 in wide has no metal outside its last row.'),
	wide(
		0.9375,
		'narrow',
		'In a lap 15/16 in wide the last row stands 1/8 in from the far edge, nearer than the minimum edge distance.'
	),
	// 1/64 less than right is 1.046875.
	wide(
		1.046,
		'narrow',
		'In a lap 1.046 in wide the last row stands 0.2335 in from the far edge, nearer than the minimum edge distance.'
	),
	wide(
		1.047,
		'right',
		'In a lap 1.047 in wide the last row has its edge distance, as the first does.'
	),
	wide(
		1.0625,
		'right',
		'In a lap 1 1/16 in wide the last row has its edge distance, as the first does.'
	),
	wide(
		1.078,
		'right',
		'In a lap 1.078 in wide the last row has its edge distance, as the first does.'
	),
	wide(
		1.079,
		'wide',
		'In a lap 1.079 in wide the last row stands 0.2665 in from the far edge, more than the minimum edge distance.'
	),
	wide(
		1.3125,
		'wide',
		'In a lap 1 5/16 in wide the last row stands 1/2 in from the far edge, more than the minimum edge distance.'
	),

	apart(0, 'together', 'Rows 0 in apart are not two rows.'),
	apart(0.25, 'underClosest', 'Rows 1/4 in apart stand closer than 2.5D.'),
	apart(0.3125, 'underByPitch', 'Rows 5/16 in apart stand closer than 75 percent of the pitch.'),
	apart(0.546, 'underByPitch', 'Rows 0.546 in apart stand closer than 75 percent of the pitch.'),
	apart(0.547, 'right', 'With rows 0.547 in apart the lap comes out 1.047 in wide.'),
	apart(0.5625, 'right', 'With rows 9/16 in apart the lap comes out 1 1/16 in wide.'),
	apart(0.578, 'right', 'With rows 0.578 in apart the lap comes out 1.078 in wide.'),
	apart(
		0.75,
		'wide',
		'With rows 3/4 in apart the lap comes out 1 1/4 in wide, more than it needs.'
	),
	// 75 percent of the pitch, 1/32 under what is asked: two tolerances off.
	apart(0.28125, 'underClosest', 'Rows 9/32 in apart stand closer than 2.5D.', byClosest),
	apart(0.3, 'right', 'With rows 0.300 in apart the lap comes out 1.100 in wide.', byClosest),
	apart(
		0.375,
		'wide',
		'With rows 3/8 in apart the lap comes out 1 1/4 in wide, more than it needs.',
		byClosest
	)
];
