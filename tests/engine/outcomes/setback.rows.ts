import type { OutcomeRow } from './outcome-row.ts';

/*
 * A square bend in 0.040 in sheet over a 1/8 in bar: K is 1 and the setback 0.165 in. Each leg is
 * too long by what the setback is too small. A rule shows 3/64 in and more as the nearest 1/16 in.
 */
const given = { R: 0.125, T: 0.04, angle: 90 };

const row = (key: string, entered: number, one: string, says: string): OutcomeRow => ({
	given,
	key,
	entered,
	case: one,
	says
});

const bothFit = 'both legs come out to their mold lines.';

export const rows: readonly OutcomeRow[] = [
	row('K', 1, 'fits', `With 1 for K, ${bothFit}`),
	row('K', 0.999, 'fits', `With 0.999 for K, ${bothFit}`),
	row('K', 1.001, 'fits', `With 1.001 for K, ${bothFit}`),
	// A wrong K is never said to fit, however little it does: 0.002 x 0.165 in.
	row('K', 0.998, 'hairLong', 'With 0.998 for K, each leg comes out less than 1/16 in too long.'),
	// 0.165 in less 0.0825 in.
	row('K', 0.5, 'long', 'With 0.5 for K, each leg comes out about 1/16 in too long.'),
	row('K', 1.1, 'hairShort', 'With 1.1 for K, each leg comes out less than 1/16 in too short.'),
	// 0.165 in too short.
	row('K', 2, 'short', 'With 2 for K, each leg comes out about 3/16 in too short.'),
	row('setback', 0.165, 'fits', `With 0.165 in for the setback, ${bothFit}`),
	row('setback', 0.164, 'fits', `With 0.164 in for the setback, ${bothFit}`),
	row('setback', 0.166, 'fits', `With 0.166 in for the setback, ${bothFit}`),
	row(
		'setback',
		0.163,
		'hairLong',
		'With 0.163 in for the setback, each leg comes out less than 1/16 in too long.'
	),
	// 3/64 in off to the line, and a little less.
	row(
		'setback',
		0.118125,
		'long',
		'With 0.1181 in for the setback, each leg comes out about 1/16 in too long.'
	),
	row(
		'setback',
		0.1182,
		'hairLong',
		'With 0.1182 in for the setback, each leg comes out less than 1/16 in too long.'
	),
	// T left out: 0.040 in too small.
	row(
		'setback',
		0.125,
		'hairLong',
		'With 0.125 in for the setback, each leg comes out less than 1/16 in too long.'
	),
	row(
		'setback',
		0.167,
		'hairShort',
		'With 0.167 in for the setback, each leg comes out less than 1/16 in too short.'
	),
	row(
		'setback',
		0.211875,
		'short',
		'With 0.2119 in for the setback, each leg comes out about 1/16 in too short.'
	),
	// The diameter taken for the radius: 1/8 in too large.
	row(
		'setback',
		0.29,
		'short',
		'With 0.290 in for the setback, each leg comes out about 1/8 in too short.'
	)
];
