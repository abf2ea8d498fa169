import type { Aside } from '$lib/engine/sets/choose-hand-ins.ts';
import type { MarkedHandIn } from '$lib/engine/sets/collect.ts';
import type { KeptHandIn } from './set-work.ts';

export const noHandIn =
	'There is no hand-in of a set among them; drop the files that students sent.';

/** The files that say what another says that is marked. */
export function joinedFiles(handIns: readonly MarkedHandIn[]): Aside[] {
	return handIns.flatMap(({ code, files }) =>
		files.slice(1).map((file) => ({
			file,
			why: `The same hand-in of ${code} as in ${files[0] ?? ''}: joined with it.`
		}))
	);
}

/** What came of taking in hand-ins, those in several files counted once. */
export function saysTaken(fresh: readonly KeptHandIn[], known: number): string {
	const count = new Set(fresh.map(({ text }) => text)).size;
	const taken = count === 1 ? '1 hand-in was taken in.' : `${count} hand-ins were taken in.`;
	return known === 0 ? taken : `${taken} ${known} had been taken in before.`;
}
