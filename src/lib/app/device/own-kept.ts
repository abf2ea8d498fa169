import { device } from './device.svelte.ts';
import { keep, readKept } from './kept.ts';

/*
 * What a page keeps of work under way. Every learner of a device has their own; what was begun
 * before there was a learner becomes the first learner's.
 */

/** The learner's own text of a name; null where nothing is kept. */
export function readOwn(name: string): string | null {
	const { learnerId } = device;
	const own = readKept(keyOf(name, learnerId));
	const first = readKept(keyOf(name, null));
	if (first === null || learnerId === null) return own;
	if (own !== null || keep(keyOf(name, learnerId), first)) keep(keyOf(name, null), null);
	return own ?? first;
}

/** Keeps a text under a name for the learner, or with null nothing. */
export function keepOwn(name: string, text: string | null): void {
	const { learnerId } = device;
	const isKept = keep(keyOf(name, learnerId), text);
	if (isKept && learnerId !== null) keep(keyOf(name, null), null);
}

function keyOf(name: string, learner: string | null): string {
	return `bucktail.${name}.${learner ?? 'first'}`;
}
