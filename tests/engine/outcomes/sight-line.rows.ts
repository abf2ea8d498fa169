import type { OutcomeRow } from './outcome-row.ts';

/*
 * A leg of 1 in, square, 0.040 in sheet over a 1/8 in bar: the setback is 0.165 in, the tangent
 * line lies at 0.835 in, the sight line 1/8 in past it at 0.960 in. The tolerance is 1/64 in, or
 * 0.015625 in.
 */
const given = { leg: 1, R: 0.125, T: 0.04, angle: 90 };

const row = (key: string, entered: number, one: string, says: string): OutcomeRow => ({
	given,
	key,
	entered,
	case: one,
	says: `With the sight line at ${says}.`
});

const fits = (at: string) => `${at}, both legs come out to their mold lines`;
const off = (at: string, by: string) =>
	`${at}, the leg under the nose comes out ${by}, and the other leg is off as far the other way`;

export const rows: readonly OutcomeRow[] = [
	row('tangentLine', 0.835, 'fits', fits('0.960 in')),
	// The tangent line on a rule: 53/64 in.
	row('tangentLine', 0.828125, 'fits', fits('0.9531 in')),
	row('tangentLine', 0.851, 'hairLong', off('0.976 in', 'less than 1/16 in too long')),
	// No setback taken off: 0.165 in too far.
	row('tangentLine', 1, 'long', off('1.125 in', 'about 3/16 in too long')),
	row('tangentLine', 0.819, 'hairShort', off('0.944 in', 'less than 1/16 in too short')),
	row('tangentLine', 0.71, 'short', off('0.835 in', 'about 1/8 in too short')),
	row('sightLine', 0.96, 'fits', fits('0.960 in')),
	row('sightLine', 0.944375, 'fits', fits('0.9444 in')),
	row('sightLine', 0.975625, 'fits', fits('0.9756 in')),
	row('sightLine', 0.976, 'hairLong', off('0.976 in', 'less than 1/16 in too long')),
	row('sightLine', 1.006875, 'long', off('1.0069 in', 'about 1/16 in too long')),
	row('sightLine', 0.944, 'hairShort', off('0.944 in', 'less than 1/16 in too short')),
	// On the tangent line.
	row('sightLine', 0.835, 'short', off('0.835 in', 'about 1/8 in too short'))
];
