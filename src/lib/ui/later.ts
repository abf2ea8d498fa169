/*
 * What a task needs only once it is answered: loaded when it is first wanted, or when the browser
 * has nothing better to do, so that the task can be answered sooner.
 */

export const markPart = () => import('$lib/engine/marking/mark.ts');
export const verdictPart = () => import('./Verdict.svelte');
export const workingPart = () => import('./Working.svelte');

/** Fetches them all when the browser is idle, so that the first verdict need not wait. */
export function warmUp(): void {
	const wait = globalThis.requestIdleCallback ?? ((call: () => void) => setTimeout(call, 200));
	wait(() => void Promise.all([markPart(), verdictPart(), workingPart()]));
}
