import type { OutcomeRow } from './outcome-row.ts';

/*
 * Legs 60° apart are bent 120° from flat: K is 1.7321 and, in 0.040 in sheet over a 1/8 in bar,
 * the setback 0.2858 in.
 */
const given = { R: 0.125, T: 0.04, betweenLegs: 60 };

const row = (key: string, entered: number, one: string, says: string): OutcomeRow => ({
	given,
	key,
	entered,
	case: one,
	says
});

export const rows: readonly OutcomeRow[] = [
	row('angle', 120, 'fits', 'Bent 120° from flat, the legs stand 60° apart, as wanted.'),
	row('angle', 119.5, 'fits', 'Bent 119.5° from flat, the legs stand 60° apart, as wanted.'),
	row('angle', 120.5, 'fits', 'Bent 120.5° from flat, the legs stand 60° apart, as wanted.'),
	row('angle', 119, 'off', 'Bent 119° from flat, the legs stand 61° apart; 60° is wanted.'),
	row('angle', 121, 'off', 'Bent 121° from flat, the legs stand 59° apart; 60° is wanted.'),
	// The angle between the legs taken for the bend angle.
	row('angle', 60, 'off', 'Bent 60° from flat, the legs stand 120° apart; 60° is wanted.'),
	row('angle', 179, 'off', 'Bent 179° from flat, the legs stand 1° apart; 60° is wanted.'),
	row('angle', 180, 'closed', 'A sheet cannot be bent 180° from flat: the legs meet before that.'),
	row(
		'angle',
		0,
		'flat',
		'At 0° from flat the sheet is not bent; the legs are to stand 60° apart.'
	),
	row('K', 1.732, 'fits', 'With 1.732 for K, both legs come out to their mold lines.'),
	// 1.6 x 0.165 in is 0.264 in.
	row('K', 1.6, 'hairLong', 'With 1.6 for K, each leg comes out less than 1/16 in too long.'),
	// K taken as 1: 0.165 in, 0.1208 in too small.
	row('K', 1, 'long', 'With 1 for K, each leg comes out about 1/8 in too long.'),
	// 1.8 x 0.165 in is 0.297 in.
	row('K', 1.8, 'hairShort', 'With 1.8 for K, each leg comes out less than 1/16 in too short.'),
	// 3.5 x 0.165 in is 0.5775 in, 0.2917 in too large.
	row('K', 3.5, 'short', 'With 3.5 for K, each leg comes out about 5/16 in too short.'),
	row(
		'setback',
		0.2858,
		'fits',
		'With 0.2858 in for the setback, both legs come out to their mold lines.'
	),
	row(
		'setback',
		0.28,
		'hairLong',
		'With 0.280 in for the setback, each leg comes out less than 1/16 in too long.'
	),
	row(
		'setback',
		0.165,
		'long',
		'With 0.165 in for the setback, each leg comes out about 1/8 in too long.'
	),
	row(
		'setback',
		0.29,
		'hairShort',
		'With 0.290 in for the setback, each leg comes out less than 1/16 in too short.'
	),
	// 0.2142 in too large.
	row(
		'setback',
		0.5,
		'short',
		'With 0.500 in for the setback, each leg comes out about 3/16 in too short.'
	)
];
