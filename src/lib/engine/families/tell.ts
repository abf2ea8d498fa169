import '../quantity/kinds/answers/all.ts';
import { untold } from '../solver/compiled.ts';
import { fetchMetal } from './later-metal.ts';

/** What each file of `methods/` tells of answers; where the build left it in the file, nothing. */
const files = import.meta.glob(['../methods/*.ts', '../methods/pieces/*.ts'], { query: '?told' });

/** The reasons for tolerances. */
const reasons = import.meta.glob('../trade/tolerances.ts', { query: '?told' });
// An import comes back in a later task only, also of what is there.
let hasReasons = false;

/**
 * Fetches what the methods and families that are loaded tell of answers: before marking, before a working is
 * shown, before a sentence is read. Rejects where it cannot be fetched.
 */
export async function tell(): Promise<void> {
	const loads = untold().map((file) => {
		const load = files[`../methods/${file}.ts`];
		if (!load) throw new Error(`methods/${file}.ts is not in the build`);
		return load;
	});
	const reasonsToFetch = hasReasons ? [] : Object.values(reasons);
	await Promise.all([fetchMetal(), ...[...reasonsToFetch, ...loads].map((load) => load())]);
	hasReasons = true;
}
