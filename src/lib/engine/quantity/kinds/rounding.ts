import type { Value } from '../value.ts';
import type { Kind } from './kind.ts';

/** Half up, to so many parts of the base unit. */
export function roundedTo(value: number, parts: number): number {
	return Math.floor(value * parts + 0.5 + 1e-9) / parts;
}

/** A result as a shop carries it to the next step: lengths to the thousandth. */
export function carried<V extends Value>(kind: Pick<Kind<V>, 'map' | 'fine'>, value: V): V {
	return kind.map(value, (one) => roundedTo(one, kind.fine));
}
