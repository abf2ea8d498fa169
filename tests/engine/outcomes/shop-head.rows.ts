import type { OutcomeRow } from './outcome-row.ts';

/*
 * A 1/8 in rivet (FAA-H-8083-31B, p. 4-32, Fig. 4-76): width 0.1875 wanted, 0.15625 to 0.2075
 * allowed; height 0.0625 wanted, 0.04125 to 0.0825 allowed. Answers count as on a size within
 * 0.001 in; between sizes, times D are rounded away from the size wanted.
 */

function sizes(
	key: string,
	lines: readonly (readonly [entered: number, told: string, says: string])[]
): OutcomeRow[] {
	return lines.map(([entered, told, says]) => ({
		given: { D: 1 / 8 },
		key,
		entered,
		case: told,
		says
	}));
}

export const rows: OutcomeRow[] = [
	...sizes('width', [
		[0, 'under', '0.000 in is 0D across, under the minimum of 1.25D.'],
		[0.125, 'under', '0.125 in is 1D across, under the minimum of 1.25D.'],
		[0.1552, 'under', '0.1552 in is 1.24D across, under the minimum of 1.25D.'],
		[0.1553, 'least', '0.1553 in is 1.25D across, the minimum, not the size to aim for.'],
		[0.156, 'least', '0.156 in is 1.25D across, the minimum, not the size to aim for.'],
		[0.1573, 'allowed', '0.1573 in is 1.25D across: allowed, but not the size to aim for.'],
		[0.1864, 'allowed', '0.1864 in is 1.49D across: allowed, but not the size to aim for.'],
		[0.1865, 'aim', '0.1865 in is 1.5D across, the size to aim for.'],
		[0.1875, 'aim', '0.1875 in is 1.5D across, the size to aim for.'],
		[0.1885, 'aim', '0.1885 in is 1.5D across, the size to aim for.'],
		[0.1886, 'allowed', '0.1886 in is 1.51D across: allowed, but not the size to aim for.'],
		[0.2064, 'allowed', '0.2064 in is 1.66D across: allowed, but not the size to aim for.'],
		[0.2065, 'most', '0.2065 in is 1.66D across, the maximum, not the size to aim for.'],
		[0.2085, 'most', '0.2085 in is 1.66D across, the maximum, not the size to aim for.'],
		[0.2086, 'over', '0.2086 in is 1.67D across, over the maximum of 1.66D.'],
		[0.25, 'over', '0.250 in is 2D across, over the maximum of 1.66D.']
	]),
	...sizes('height', [
		[0.04, 'under', '0.040 in is 0.32D high, under the minimum of 0.33D.'],
		[0.041, 'least', '0.041 in is 0.33D high, the minimum, not the size to aim for.'],
		[0.0423, 'allowed', '0.0423 in is 0.33D high: allowed, but not the size to aim for.'],
		[0.0614, 'allowed', '0.0614 in is 0.49D high: allowed, but not the size to aim for.'],
		[0.0625, 'aim', '0.0625 in is 0.5D high, the size to aim for.'],
		[0.0635, 'aim', '0.0635 in is 0.5D high, the size to aim for.'],
		[0.0636, 'allowed', '0.0636 in is 0.51D high: allowed, but not the size to aim for.'],
		[0.083, 'most', '0.083 in is 0.66D high, the maximum, not the size to aim for.'],
		[0.0836, 'over', '0.0836 in is 0.67D high, over the maximum of 0.66D.'],
		[0.1875, 'over', '0.1875 in is 1.5D high, over the maximum of 0.66D.']
	])
];
