import type { OutcomeRow } from './outcome-row.ts';

/*
 * A square bend in 0.032 in sheet over a 1/8 in bar takes
 * (0.01743 x 0.125 + 0.0078 x 0.032) x 90 = 0.2185515 in; what is laid out over that is left in
 * the last leg. The tolerance is 0.003 in.
 */
const given = { R: 0.125, T: 0.032, angle: 90 };

const row = (entered: number, one: string, allowed: string, comes: string): OutcomeRow => ({
	given,
	key: 'allowance',
	entered,
	case: one,
	says: `With ${allowed} allowed for the bend, the last leg comes out ${comes}.`
});

export const rows: readonly OutcomeRow[] = [
	row(0.2185515, 'fits', '0.2186 in', 'to its mold line'),
	row(0.2215515, 'fits', '0.2216 in', 'to its mold line'),
	row(0.2155515, 'fits', '0.2156 in', 'to its mold line'),
	row(0.222, 'hairLong', '0.222 in', 'less than 1/16 in too long'),
	row(0.215, 'hairShort', '0.215 in', 'less than 1/16 in too short'),
	// 1/32 in too much is no 1/16 in; 3/64 in, to the line, is about as much.
	row(0.2498015, 'hairLong', '0.2498 in', 'less than 1/16 in too long'),
	row(0.2654265, 'long', '0.2654 in', 'about 1/16 in too long'),
	// 0.1814 in too much.
	row(0.4, 'long', '0.400 in', 'about 3/16 in too long'),
	row(0.1716765, 'short', '0.1717 in', 'about 1/16 in too short'),
	// Nothing allowed: the bend takes all of its 0.2186 in from the leg.
	row(0, 'short', '0.000 in', 'about 3/16 in too short')
];
