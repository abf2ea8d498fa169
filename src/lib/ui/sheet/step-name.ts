import { inSentence } from '$lib/engine/quantity/capital.ts';
import type { Method } from '$lib/engine/solver/method.ts';
import { symbolOf } from '$lib/engine/solver/symbol.ts';

/** Most letters of a label that stand on a stamp or a button. */
const longest = 22;

/** A step in a word or two, behind its number: `step 1, grip`, `step 2, K`. */
export function stepName(method: Method, key: string): string {
	const { symbol = null, label = key } = method.steps[key] ?? {};
	const short = label.replace(/[:,].*/, '');
	if (symbol || short.length > longest) return symbolOf(method, key);
	return inSentence(short);
}
