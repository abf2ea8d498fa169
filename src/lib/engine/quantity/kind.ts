/** What a value measures. Every value is kept in the base unit of its kind. */
export type Kind = 'length' | 'angle' | 'weight' | 'density' | 'number' | 'text';

/** Base unit of each kind: inch, degree (of bend from flat), pound, pound per cubic inch. */
export const baseUnit: Readonly<Record<Kind, string>> = {
	length: 'in',
	angle: 'deg',
	weight: 'lb',
	density: 'lb/in3',
	number: '',
	text: ''
};

/** One value of a method: a number in the base unit of its kind, words, or a list of numbers. */
export type Value = number | string | readonly number[];

/** The unit lengths are shown in, and the one a bare number is read in. */
export type LengthUnit = 'in' | 'mm';

/**
 * How the shop writes a value.
 *
 * - `thousandth`: decimal inches, at least three places: 0.050 in, 0.1875 in
 * - `fraction`: the fraction of an inch when it is one of 64ths, else as `thousandth`: 3/8 in
 * - `rivet-diameter`: a fraction; the dash number counts 32nds: 1/8 in (−4)
 * - `rivet-length`: a fraction; the dash number counts 16ths: 5/16 in (−5)
 * - `drill`: the drill's name and its size: No. 30 (0.1285 in)
 * - `count`: a whole number
 * - `factor`: a number without unit, up to five places
 * - `hundredth`: a number to two places at most, for what is only told: 1.35
 * - `degrees`, `pounds`: with their unit
 * - `words`: text as it stands
 */
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
