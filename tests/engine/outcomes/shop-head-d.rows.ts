import type { OutcomeRow } from './outcome-row.ts';

/*
 * A 3/16 in D rivet (FAA-H-8083-31B, p. 4-32, Fig. 4-76): width 0.2625 wanted, 0.2344 to 0.2813
 * allowed; height 0.1125 wanted, 0.0938 to 0.1238 allowed.
 */
function sizes(
	key: string,
	lines: readonly (readonly [entered: number, told: string, says: string])[]
): OutcomeRow[] {
	const given = { D: 3 / 16 };
	return lines.map(([entered, told, says]) => ({ given, key, entered, case: told, says }));
}

export const rows: OutcomeRow[] = [
	...sizes('width', [
		[0.2, 'under', '0.200 in is 1.06D across, under the minimum of 1.25D.'],
		[0.234, 'least', '0.234 in is 1.25D across, the minimum, not the size to aim for.'],
		[0.25, 'allowed', '0.250 in is 1.33D across: allowed, but not the size to aim for.'],
		[0.2625, 'aim', '0.2625 in is 1.4D across, the size to aim for.'],
		[0.281, 'most', '0.281 in is 1.5D across, the maximum, not the size to aim for.'],
		[0.3, 'over', '0.300 in is 1.6D across, over the maximum of 1.5D.']
	]),
	...sizes('height', [
		[0.08, 'under', '0.080 in is 0.42D high, under the minimum of 0.5D.'],
		[0.094, 'least', '0.094 in is 0.5D high, the minimum, not the size to aim for.'],
		[0.1, 'allowed', '0.100 in is 0.53D high: allowed, but not the size to aim for.'],
		[0.112, 'aim', '0.112 in is 0.6D high, the size to aim for.'],
		[0.124, 'most', '0.124 in is 0.66D high, the maximum, not the size to aim for.'],
		[0.15, 'over', '0.150 in is 0.8D high, over the maximum of 0.66D.']
	])
];
