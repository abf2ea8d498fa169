import { decapital } from '$lib/engine/quantity/capital.ts';
import type { Aside } from '$lib/engine/sets/choose-hand-ins.ts';
import type { MarkedHandIn } from '$lib/engine/sets/collect.ts';
import { counted } from '$lib/ui/counted.ts';
import { listed } from '$lib/ui/listed.ts';
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
			why: `The same hand-in of ${code} as in ${files[0] ?? ''}: joined with it.`,
			isSettled: true
		}))
	);
}

/** A hand-in that is too long for the log. */
export function tooLong({ file }: KeptHandIn): Aside {
	return { file, why: 'Too long to be kept with the set; ask for it with shorter entries.' };
}

/** A hand-in of another set. */
export function ofAnother({ file, hash }: KeptHandIn): Aside {
	return { file, why: `Belongs to another set, ${hash}.` };
}

/** Most files that are named in one sentence. */
const mostNamed = 4;

/**
 * What came of taking in hand-ins, those in several files counted once, and of what was given
 * with them and could not be marked.
 */
export function saysTaken(
	fresh: readonly KeptHandIn[],
	known: number,
	aside: readonly Aside[] = []
): string {
	const count = new Set(fresh.map(({ text }) => text)).size;
	const taken =
		count === 0 ? 'Nothing new.' : `${counted(count, 'hand-in was', 'hand-ins were')} taken in.`;
	const before = known === 0 ? '' : `${known} had been taken in before.`;
	// Where all that was given is set aside, that is what came of it.
	const first = count + known === 0 && aside.length > 0 ? '' : taken;
	return [first, before, saysAside(aside)].filter((one) => one !== '').join(' ');
}

function saysAside(aside: readonly Aside[]): string {
	const [one] = aside;
	if (!one) return '';
	if (aside.length === 1) return `${one.file} is set aside, not marked: ${decapital(one.why)}`;
	const named = aside.length <= mostNamed;
	const files = named ? listed(aside.map(({ file }) => file)) : `${aside.length} files`;
	return `${files} are set aside, not marked; the list below says why.`;
}
