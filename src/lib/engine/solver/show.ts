import { isList, type LengthUnit, type Value } from '../quantity/value.ts';
import { kindAt } from './kind-at.ts';
import type { Method } from './method.ts';

/** The value of a given or a step, or of one member of its list, as the shop writes it. */
export function textAt(
	method: Method,
	key: string,
	value: Value,
	units: LengthUnit = 'in'
): string {
	const kind = kindAt(method, key);
	const isMember = kind.isList && !isList(value);
	return (isMember ? kind.member : kind).write(value, units);
}
