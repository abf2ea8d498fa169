/** BRIDGE, to go once methods name their kinds: names of dimensions. */
export type Kind = 'length' | 'angle' | 'weight' | 'density' | 'number' | 'text';

/** One value of a method: a number in the base unit of its kind, words, or a list of numbers. */
export type Value = number | string | readonly number[];

/** The unit lengths are shown in, and the one a bare number is read in. */
export type LengthUnit = 'in' | 'mm';

/** BRIDGE, to go once methods name their kinds: names of kinds, see bridge.ts. */
export type Style =
	| 'thousandth'
	| 'fraction'
	| 'rivet-diameter'
	| 'rivet-length'
	| 'drill'
	| 'count'
	| 'factor'
	| 'hundredth'
	| 'degrees'
	| 'pounds'
	| 'words';
