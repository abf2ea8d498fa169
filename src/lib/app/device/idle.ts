/** Resolves when the browser has painted and has nothing more pressing to do. */
export function idle(): Promise<void> {
	return new Promise((resolve) => {
		const wait = globalThis.requestIdleCallback ?? ((call: () => void) => setTimeout(call, 100));
		requestAnimationFrame(() => wait(() => resolve()));
	});
}
