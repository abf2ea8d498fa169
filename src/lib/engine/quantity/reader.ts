import type { Reading } from './reading.ts';

/*
 * Reading what people type takes more program than all kinds together, and a page can show a task
 * without it: it is fetched once there is text to read, or ahead, when the page is idle.
 */

/** Everything that kinds read with. */
export type Reader = typeof import('./read.ts');

let reader: Reader | null = null;

/** Fetches the reader; null when it cannot be had. */
export async function loadReader(): Promise<Reader | null> {
	try {
		reader ??= await import('./read.ts');
	} catch {
		// Asked for again with the next text.
	}
	return reader;
}

/** Reads at once if the reader is there; text that has to wait for it is left to `workWith`. */
export function readWith<R>(text: string, by: (reader: Reader) => Reading<R>): Reading<R> {
	if (reader) return by(reader);
	return text.trim() === '' ? { state: 'empty' } : { state: 'arithmetic', text };
}

/** Reads as soon as the reader is there. Never rejects. */
export async function workWith<R>(
	by: (reader: Reader) => Reading<R> | Promise<Reading<R>>
): Promise<Reading<R>> {
	const loaded = await loadReader();
	return loaded
		? by(loaded)
		: { state: 'unread', why: 'The reading of answers could not be loaded. Reload the page.' };
}
