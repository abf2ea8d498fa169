import type { OutcomeRow } from './outcome-row.ts';

type Given = OutcomeRow['given'];

/**
 * A joint whose thickest sheet is 0.040 in: three times that is 0.120, so the rivet is a 1/8 in
 * (FAA-H-8083-31B, p. 4-32). How many times the sheet a diameter is, is cut off after two places.
 */
export function forty(given: Given): OutcomeRow[] {
	const at = { given, key: 'diameter' };
	return [
		{ ...at, entered: -1, case: 'unstocked', says: '−1.000 in is no rivet size.' },
		{ ...at, entered: 0, case: 'unstocked', says: '0 in is no rivet size.' },
		{
			...at,
			entered: 1 / 16,
			case: 'small',
			says: '1/16 in (−2) is too small for a part that carries stress.'
		},
		{
			...at,
			entered: 3 / 32,
			case: 'under',
			says: '3/32 in (−3) is only 2.34T: the rivets may shear before the sheet tears.'
		},
		{
			// 3/32 in within a thousandth: 0.09475 is its upper edge.
			...at,
			entered: 0.0947,
			case: 'under',
			says: '0.0947 in is only 2.36T: the rivets may shear before the sheet tears.'
		},
		{ ...at, entered: 0.0948, case: 'unstocked', says: '0.0948 in is no rivet size.' },
		{ ...at, entered: 0.12, case: 'unstocked', says: '0.120 in is no rivet size.' },
		{ ...at, entered: 0.1239, case: 'unstocked', says: '0.1239 in is no rivet size.' },
		{
			...at,
			entered: 0.124,
			case: 'right',
			says: '0.124 in is 3.1T, the smallest rivet for this joint.'
		},
		{
			...at,
			entered: 1 / 8,
			case: 'right',
			says: '1/8 in (−4) is 3.12T, the smallest rivet for this joint.'
		},
		{
			...at,
			entered: 0.126,
			case: 'right',
			says: '0.126 in is 3.15T, the smallest rivet for this joint.'
		},
		{ ...at, entered: 0.1261, case: 'unstocked', says: '0.1261 in is no rivet size.' },
		{
			...at,
			entered: 5 / 32,
			case: 'over',
			says: '5/32 in (−5) is 3.9T: a larger hole than the joint needs.'
		}
	];
}

/** 0.016 in: three times that is 0.048, and the rivet 3/32 in, the least for stress. */
export function sixteen(given: Given): OutcomeRow[] {
	const at = { given, key: 'diameter' };
	return [
		{
			...at,
			entered: 1 / 16,
			case: 'small',
			says: '1/16 in (−2) is too small for a part that carries stress.'
		},
		{
			...at,
			entered: 3 / 32,
			case: 'right',
			says: '3/32 in (−3) is 5.85T, the smallest rivet for this joint.'
		}
	];
}

/** 0.080 in: 3T is 0.240, and the rivet 1/4 in; 7/32 in is 2.73T. */
export function eighty(given: Given): OutcomeRow[] {
	const at = { given, key: 'diameter' };
	return [
		{
			// 0.2 is 2.5T.
			...at,
			entered: 7 / 32,
			case: 'range',
			says: '7/32 in (−7) is 2.73T, within 2.5T to 3T; this asks for the next size above 3T.'
		},
		{
			...at,
			entered: 3 / 16,
			case: 'under',
			says: '3/16 in (−6) is only 2.34T: the rivets may shear before the sheet tears.'
		}
	];
}
