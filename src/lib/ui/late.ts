/** A part of the program that could not be fetched, or that threw as it started. */
export class NotLoaded extends Error {}

/**
 * Fetches a part of the program when it is first wanted. Every `import(…)` of the pages stands in
 * one of these (lint holds it), so that whoever waits is told to reload the page, and not that
 * something unknown went wrong.
 *
 * @throws NotLoaded
 */
export async function late<T>(load: () => Promise<T>): Promise<T> {
	try {
		return await load();
	} catch (cause) {
		throw new NotLoaded('part of the page could not be loaded', { cause });
	}
}

/** Milliseconds after which it is done all the same: a busy device has something better for long. */
const patience = 1000;

/** Calls back when the browser has nothing better to do, or has had it for too long. */
export function whenIdle(call: () => void): void {
	if ('requestIdleCallback' in globalThis) requestIdleCallback(call, { timeout: patience });
	else setTimeout(call, 200);
}

/** Resolves when the browser has painted and has nothing more pressing to do. */
export function idle(): Promise<void> {
	return new Promise((resolve) => requestAnimationFrame(() => whenIdle(resolve)));
}
