import type { Tolerance } from '../../solver/method.ts';

/** Condition: the answer is within the tolerance of its step, so that it is accepted. */
export function nearRight(key: string, { amount }: Tolerance, unit = 'in'): string {
	return `abs(${key} - right.${key}) <= ${amount} ${unit}`;
}
