import { askToPersist, type Persistence, persistence } from '$lib/storage/persist.ts';

let asked: Promise<Persistence> | null = null;

/**
 * Asks the browser to keep what is stored, unless it does already. At most once a visit: some
 * browsers put the question to the person.
 */
export function askToKeep(): Promise<Persistence> {
	asked ??= persistence().then((kept) => (kept === 'granted' ? kept : askToPersist()));
	return asked;
}
