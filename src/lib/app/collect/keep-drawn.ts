import { setHash } from '$lib/engine/sets/set.ts';
import { setShelf } from '../sets/shelf.svelte.ts';
import { unexpected } from '../unexpected.svelte.ts';
import type { collecting as pages } from './collecting.svelte.ts';
import { CalledOff } from './work-desk.ts';

/**
 * Puts into the log what the tasks of the open set drew, for everybody and for the codes that have
 * numbers of their own, so that they can be marked here after a later revision too.
 *
 * @param codes where left out, those that were collected
 */
export function keepDrawn(collecting: typeof pages, codes?: readonly string[]): Promise<void> {
	keeping = keeping.then(() => keepMissing(collecting, codes));
	return keeping;
}

/** One after the other, so that nothing is kept twice. */
let keeping: Promise<void> = Promise.resolve();

async function keepMissing(
	collecting: typeof pages,
	codes: readonly string[] = collecting.handIns.map(({ code }) => code)
): Promise<void> {
	try {
		const kept = await collecting.keptSet();
		if (!kept) return;
		const hash = setHash(kept.set);
		const own = kept.set.numbers === 'own' ? codes : [];
		const missing = await setShelf.notKept(hash, [null, ...own]);
		if (missing.length === 0) return;
		await setShelf.keepSheets(hash, await collecting.desk.run('sheets', [kept, missing]));
	} catch (error) {
		if (!(error instanceof CalledOff)) unexpected.show(error);
	}
}
