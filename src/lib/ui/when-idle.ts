/** Calls back when the browser has nothing better to do. */
export function whenIdle(call: () => void): void {
	if ('requestIdleCallback' in globalThis) requestIdleCallback(call);
	else setTimeout(call, 200);
}
