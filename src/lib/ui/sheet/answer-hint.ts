import { kindAt } from '$lib/engine/solver/kind-at.ts';
import type { Method } from '$lib/engine/solver/method.ts';

/** What may be typed for a step, in one short line. */
export function answerHint(method: Method, key: string): string {
	return kindAt(method, key).hint;
}
