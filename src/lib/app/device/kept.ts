/*
 * What the pages keep in this browser besides the log: short texts by key. Storage may be refused
 * or full; what is kept then lasts until the page is closed.
 */

/** The text under a key; null where there is none, or storage is refused. */
export function readKept(key: string): string | null {
	try {
		return localStorage.getItem(key);
	} catch {
		return null;
	}
}

/** Keeps a text under a key, or with null nothing; false where storage is refused or full. */
export function keep(key: string, text: string | null): boolean {
	try {
		if (text === null) localStorage.removeItem(key);
		else localStorage.setItem(key, text);
		return true;
	} catch {
		return false;
	}
}

/** What a kept text holds, as JSON; null where there is no text, or it is damaged. */
export function keptJson(text: string | null): unknown {
	try {
		return JSON.parse(text ?? 'null');
	} catch {
		return null;
	}
}
