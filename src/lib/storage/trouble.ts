/**
 * What can go wrong with the store.
 *
 * - `blocked`: tabs with an older version keep the store from opening here
 * - `outdated`: a newer version has taken over the store
 * - `closed`: the browser closed the store
 * - `full`: there is no room left
 * - `removed`: the learner is no longer on this device
 * - `silent`: the browser has not answered for a while, and may yet
 * - `unavailable`: this browser stores nothing for the site
 * - `failed`: anything else
 */
export type Trouble =
	| 'blocked'
	| 'outdated'
	| 'closed'
	| 'full'
	| 'removed'
	| 'silent'
	| 'unavailable'
	| 'failed';

/** Something was to be written for a learner who is not on this device. */
export class LearnerRemoved extends Error {}

export function troubleOf(error: unknown): Trouble {
	if (error instanceof LearnerRemoved) return 'removed';
	if (error instanceof ReferenceError) return 'unavailable';
	return error instanceof DOMException ? (byName.get(error.name) ?? 'failed') : 'failed';
}

const byName: ReadonlyMap<string, Trouble> = new Map([
	['QuotaExceededError', 'full'],
	['VersionError', 'outdated'],
	['InvalidStateError', 'closed'],
	['SecurityError', 'unavailable']
]);

export const troubleSentences: Readonly<Record<Trouble, string>> = {
	blocked: 'Close the other tabs that show Bucktail; it then opens here.',
	outdated: 'Bucktail was updated in another tab; reload this page.',
	closed: 'The browser closed the store on this device; reload this page.',
	full: 'There is no room left on this device; free some, then try again.',
	removed: 'This learner was removed from this device; choose another one.',
	silent:
		'The store on this device does not answer: answers are kept until this tab closes; leave it open, close other tabs of Bucktail, and if that does not help, restart the browser.',
	unavailable:
		'This browser stores nothing for this page: answers are kept until this tab closes; allow site data for this address, then reload.',
	failed: 'That could not be saved on this device; reload this page and try again.'
};

/** What to say when work with the store has thrown. */
export function sentenceFor(error: unknown): string {
	return troubleSentences[troubleOf(error)];
}

/** Longest wait for an answer of the store before somebody is told, in milliseconds. */
const patience = 8000;

/** Waits for work with the store, and says so when that takes long; the work goes on. */
export async function answered<T>(
	work: Promise<T>,
	onTrouble: (trouble: Trouble) => void
): Promise<T> {
	const timer = setTimeout(() => onTrouble('silent'), patience);
	try {
		return await work;
	} finally {
		clearTimeout(timer);
	}
}
