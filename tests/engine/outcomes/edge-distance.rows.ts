import type { OutcomeRow } from './outcome-row.ts';

/*
 * FAA-H-8083-31B, ch. 4, pp. 4-33 and 4-34, Fig. 4-79. A 1/8 protruding rivet: least 2 D = 1/4,
 * preferred 1/16 more = 5/16, greatest 4 D = 1/2. Countersunk: least 2.5 D = 5/16, preferred 3/8.
 */

const protruding = { D: 1 / 8, head: 'protruding' };
const countersunk = { D: 1 / 8, head: 'countersunk' };

const everywhere: readonly OutcomeRow[] = (['least', 'preferred', 'greatest'] as const).flatMap(
	(key): OutcomeRow[] => [
		{
			given: protruding,
			key,
			entered: 0,
			case: 'off',
			says: 'A hole centre 0 in from the edge is not on the sheet.'
		},
		{
			given: protruding,
			key,
			entered: 1 / 64,
			case: 'breaks',
			says: 'At 1/64 in the hole breaks through the edge of the sheet.'
		},
		// The hole touches the edge at half the diameter, 1/16; past it there is metal outside.
		{
			given: protruding,
			key,
			entered: 1 / 16,
			case: 'breaks',
			says: 'At 1/16 in the hole breaks through the edge of the sheet.'
		},
		{
			given: protruding,
			key,
			entered: 0.07,
			case: 'near',
			says: '0.070 in is under the minimum: the metal outside can crack, or the rivet pull out.'
		},
		{
			given: protruding,
			key,
			entered: 0.2489,
			case: 'near',
			says: '0.2489 in is under the minimum: the metal outside can crack, or the rivet pull out.'
		},
		{
			given: countersunk,
			key,
			entered: 1 / 4,
			case: 'near',
			says: '1/4 in is under the minimum: the metal outside can crack, or the rivet pull out.'
		},
		{
			given: protruding,
			key,
			entered: 0.5011,
			case: 'far',
			says: '0.5011 in is over the maximum: the edge can lift.'
		}
	]
);

export const rows: readonly OutcomeRow[] = [
	...everywhere,
	{
		given: protruding,
		key: 'least',
		entered: 0.25,
		case: 'least',
		says: '1/4 in is 2D from the edge: the minimum.'
	},
	{
		given: countersunk,
		key: 'least',
		entered: 0.3125,
		case: 'least',
		says: '5/16 in is 2.5D from the edge: the minimum.'
	},
	// Within 0.001 in of the least on both sides. 0.249 / 0.125 = 1.992, 0.251 / 0.125 = 2.008.
	{
		given: protruding,
		key: 'least',
		entered: 0.249,
		case: 'least',
		says: '0.249 in is 1.99D from the edge: the minimum.'
	},
	{
		given: protruding,
		key: 'least',
		entered: 0.251,
		case: 'least',
		says: '0.251 in is 2.01D from the edge: the minimum.'
	},
	{
		given: protruding,
		key: 'least',
		entered: 0.2511,
		case: 'between',
		says: '0.2511 in is inside the limits, but it is not the minimum: the hole may stand nearer.'
	},
	{
		given: protruding,
		key: 'least',
		entered: 0.501,
		case: 'between',
		says: '0.501 in is inside the limits, but it is not the minimum: the hole may stand nearer.'
	},
	{
		given: protruding,
		key: 'preferred',
		entered: 0.25,
		case: 'bare',
		says: '1/4 in is the bare minimum: nothing is left for a larger rivet in the same hole later.'
	},
	{
		given: protruding,
		key: 'preferred',
		entered: 9 / 32,
		case: 'little',
		says: '9/32 in is over the minimum, but by less than is preferred.'
	},
	{
		given: protruding,
		key: 'preferred',
		entered: 0.3114,
		case: 'little',
		says: '0.3114 in is over the minimum, but by less than is preferred.'
	},
	{
		given: protruding,
		key: 'preferred',
		entered: 0.3115,
		case: 'preferred',
		says: '0.3115 in is the minimum plus 1/16 in: the hole can later go oversize.'
	},
	{
		given: countersunk,
		key: 'preferred',
		entered: 3 / 8,
		case: 'preferred',
		says: '3/8 in is the minimum plus 1/16 in: the hole can later go oversize.'
	},
	{
		given: countersunk,
		key: 'preferred',
		entered: 25 / 64,
		case: 'between',
		says: '25/64 in is inside the limits, but it is more than is preferred.'
	},
	{
		given: protruding,
		key: 'greatest',
		entered: 0.25,
		case: 'between',
		says: '1/4 in is inside the limits, but it is not the maximum: the hole may stand farther in.'
	},
	{
		given: protruding,
		key: 'greatest',
		entered: 0.4989,
		case: 'between',
		says: '0.4989 in is inside the limits, but it is not the maximum: the hole may stand farther in.'
	},
	{
		given: protruding,
		key: 'greatest',
		entered: 0.499,
		case: 'greatest',
		says: '0.499 in is 3.99D from the edge, the maximum: farther in, the edge can lift.'
	},
	{
		given: countersunk,
		key: 'greatest',
		entered: 0.5,
		case: 'greatest',
		says: '1/2 in is 4D from the edge, the maximum: farther in, the edge can lift.'
	}
];
