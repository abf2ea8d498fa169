const tabKey = 'bucktail.set-code';

/** The code that somebody is at work under in this tab, so that a reload goes on. */
export function readTab(): string | null {
	try {
		return sessionStorage.getItem(tabKey);
	} catch {
		return null;
	}
}

/** Keeps the code in this tab, or with null none. */
export function keepTab(code: string | null): void {
	try {
		if (code === null) sessionStorage.removeItem(tabKey);
		else sessionStorage.setItem(tabKey, code);
	} catch {
		// Then a reload asks for the code again.
	}
}
