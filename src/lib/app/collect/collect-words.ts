import type { Aside } from '$lib/engine/sets/choose-hand-ins.ts';
import type { MarkedHandIn } from '$lib/engine/sets/collect.ts';
import { counted } from '$lib/ui/counted.ts';
import type { KeptHandIn } from './set-work.ts';

export const noHandIn =
	'There is no hand-in of a set among them; drop the files that students sent.';

/** Of a text that was pasted. */
export const nothingInText =
	'That text holds neither a hand-in nor the link of a set; paste the whole of one.';

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
	const before = known === 0 ? '' : ` ${known} had been taken in before.`;
	if (count === 0) return `Nothing new.${before}`;
	return `${counted(count, 'hand-in was', 'hand-ins were')} taken in.${before}`;
}
