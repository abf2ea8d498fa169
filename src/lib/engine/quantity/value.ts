/**
 * One value of a method: a number in the base unit of its dimension, words, a list of either, or a
 * plan. What a value may be asked for is the business of its kind.
 */
export type Value = number | string | readonly (number | string)[] | Plan;

/**
 * A layout or cut list as plain data: parts (bars, sheets) that each hold some pieces of a size, in
 * the base unit of the size.
 */
export interface Plan {
	readonly parts: readonly (readonly Pieces[])[];
}

/** So many equal pieces. */
export interface Pieces {
	readonly count: number;
	readonly size: number;
}

export function isList(value: Value | undefined): value is readonly (number | string)[] {
	return Array.isArray(value);
}

/** The unit lengths are shown in, and the one a bare number is read in. */
export type LengthUnit = 'in' | 'mm';
