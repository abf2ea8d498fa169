import type { Method } from '$lib/engine/solver/method.ts';
import { toldOf } from '$lib/engine/solver/told.ts';

/** What a step asks, as one sentence. */
export function questionOf(method: Method, key: string): string {
	const step = method.steps[key];
	if (!step) return key;
	return (
		step.asks || toldOf(step.from.unit).asks[step.from.key] || `${step.label}: how much is it?`
	);
}
