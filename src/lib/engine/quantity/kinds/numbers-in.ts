import type { ReadValue } from '../reading.ts';
import type { Value } from '../value.ts';
import type { Entry, Kind } from './kind.ts';

/** The numbers of an entry, as far as it has the shape of a value. */
export function numbersIn(kind: Kind, entry: Entry<ReadValue>, right?: Value): readonly number[] {
	const value = kind.toValue(entry, right);
	return value === null ? [] : kind.numbers(value);
}
