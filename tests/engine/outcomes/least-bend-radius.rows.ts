import type { OutcomeRow } from './outcome-row.ts';

/*
 * FAA-H-8083-31B, ch. 4, p. 4-61, Fig. 4-124: 2024-T3 of 0.040 in takes 0.16 in, which is 5/32 in
 * and a bar in the rack; of 0.063 in it takes 0.22 in, 7/32 in, and the next bar is 1/4 in.
 */
const thin = { alloy: '2024-T3', T: 0.04 };
const thick = { alloy: '2024-T3', T: 0.063 };

const row = (
	given: OutcomeRow['given'],
	key: string,
	entered: number,
	one: string,
	says: string
): OutcomeRow => ({ given, key, entered, case: one, says });

const sharp =
	'is sharper than the chart allows: the outside is stretched too far and may crack, at once or in service.';
const asSharp = 'is as sharp as this sheet may be bent.';
const wide =
	'will not crack, but the chart allows a sharper bend; this one takes more room than it needs.';
const sharpestBar = 'is the sharpest in the rack that this sheet may be bent over.';

export const rows: readonly OutcomeRow[] = [
	row(thin, 'radius', 0.16, 'fits', `A radius of 0.160 in ${asSharp}`),
	row(thin, 'radius', 0.155, 'fits', `A radius of 0.155 in ${asSharp}`),
	row(thin, 'radius', 0.165, 'fits', `A radius of 0.165 in ${asSharp}`),
	row(thin, 'radius', 0.154, 'sharp', `A radius of 0.154 in ${sharp}`),
	row(thin, 'radius', 0.12, 'sharp', `A radius of 0.120 in ${sharp}`),
	row(thin, 'radius', 0.166, 'wide', `A radius of 0.166 in ${wide}`),
	// No bar in the rack is as large as that; the radius is told all the same.
	row(thin, 'radius', 0.31, 'wide', `A radius of 0.310 in ${wide}`),
	row(thin, 'bar', 5 / 32, 'fits', `A nose bar of 5/32 in ${sharpestBar}`),
	row(thick, 'bar', 1 / 4, 'fits', `A nose bar of 1/4 in ${sharpestBar}`),
	row(thin, 'bar', 1 / 8, 'sharp', `A nose bar of 1/8 in ${sharp}`),
	row(thick, 'bar', 3 / 16, 'sharp', `A nose bar of 3/16 in ${sharp}`),
	row(thick, 'bar', 0.217, 'sharp', `A nose bar of 0.217 in ${sharp}`),
	row(
		thick,
		'bar',
		7 / 32,
		'missing',
		'A radius of 7/32 in will not crack, but the rack has no such nose bar.'
	),
	row(
		thick,
		'bar',
		0.218,
		'missing',
		'A radius of 0.218 in will not crack, but the rack has no such nose bar.'
	),
	row(
		thin,
		'bar',
		3 / 16,
		'wide',
		'A nose bar of 3/16 in will not crack the sheet, but a sharper one is allowed; this bend takes more room than it needs.'
	)
];
