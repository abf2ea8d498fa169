import { exactly } from '../exact.ts';
import { isIn64ths } from '../sixty-fourths.ts';
import type { Value } from '../value.ts';
import type { Kind } from './kind.ts';

/** Half up, to so many parts of the base unit. */
export function roundedTo(value: number, parts: number): number {
	return Math.floor(value * parts + 0.5 + 1e-9) / parts;
}

/** Cut off behind so many parts of the base unit. */
export function cutTo(value: number, parts: number): number {
	return Math.floor(value * parts + 1e-9) / parts;
}

/**
 * A result as a shop carries it to the next step: lengths to the thousandth, but a size that is
 * written as a fraction as that fraction.
 */
export function carried<V extends Value>(kind: Pick<Kind<V>, 'map' | 'fine'>, value: V): V {
	return kind.map(value, (one) => (isFraction(kind, one) ? one : roundedTo(one, kind.fine)));
}

/** Whether a number of this kind is written as a fraction, as it stands on a rule. */
export function isFraction(kind: object, one: number): boolean {
	return 'fractions' in kind && kind.fractions === true && isIn64ths(exactly(one));
}
