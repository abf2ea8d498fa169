import type { Tolerance } from '../../solver/method.ts';

/** The tolerance of a step as a length in a formula: `(0.032 in)`. */
export function inches({ amount }: Tolerance): string {
	return `(${amount} in)`;
}

/** Condition: the answer is within the tolerance of its step, so that it is accepted. */
export function nearRight(key: string, { amount }: Tolerance, unit = 'in'): string {
	return `abs(${key} - right.${key}) <= ${amount} ${unit}`;
}
