import type { OutcomeRow } from './outcome-row.ts';

/*
 * Two sheets of 0.064 in: 2.5T is 0.160 and 3T is 0.192, so that 3/16 in lies between, and the next
 * stocked size above is 1/4 in (FAA-H-8083-31B, p. 4-32). Times T are cut off after two places.
 */
function sizes(
	key: string,
	lines: readonly (readonly [entered: number, told: string, says: string])[]
): OutcomeRow[] {
	const given = { thickest: 0.064 };
	return lines.map(([entered, told, says]) => ({ given, key, entered, case: told, says }));
}

export const rows: OutcomeRow[] = [
	...sizes('inRange', [
		[3 / 16, 'right', '3/16 in (−6) is 2.92T, within 2.5T to 3T.'],
		[0.1865, 'right', '0.1865 in is 2.91T, within 2.5T to 3T.'],
		[0.192, 'unstocked', '0.192 in is 3T, but no bin holds it.'],
		[7 / 32, 'over', '7/32 in (−7) is 3.41T, over the range of 2.5T to 3T.'],
		[5 / 32, 'under', '5/32 in (−5) is only 2.44T: the rivets may shear before the sheet tears.']
	]),
	...sizes('above', [
		[1 / 4, 'right', '1/4 in (−8) is 3.9T, the next stocked size above 3T.'],
		[7 / 32, 'unstocked', '7/32 in (−7) is 3.41T, but no bin holds it.'],
		[
			3 / 16,
			'range',
			'3/16 in (−6) is 2.92T, within 2.5T to 3T; this asks for the next size above 3T.'
		],
		[5 / 32, 'under', '5/32 in (−5) is only 2.44T: the rivets may shear before the sheet tears.'],
		[5 / 16, 'over', '5/16 in (−10) is 4.88T: a larger hole than the joint needs.']
	])
];
