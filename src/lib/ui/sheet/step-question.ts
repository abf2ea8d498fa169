import type { Method } from '$lib/engine/solver/method.ts';

/** What a step asks, as one sentence. */
export function questionOf(method: Method, key: string): string {
	const step = method.steps[key];
	return `${step?.label ?? key}?`;
}
