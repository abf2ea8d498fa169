import type { Aside } from '$lib/engine/sets/choose-hand-ins.ts';
import type { MarkedHandIn } from '$lib/engine/sets/collect.ts';

/** The files that say what another says that is marked. */
export function joinedFiles(handIns: readonly MarkedHandIn[]): Aside[] {
	return handIns.flatMap(({ code, files }) =>
		files.slice(1).map((file) => ({
			file,
			why: `The same hand-in of ${code} as in ${files[0] ?? ''}: joined with it.`
		}))
	);
}
