import type { Found } from '../engine/sets/choose-hand-ins.ts';
import { setHash, type TaskSet } from '../engine/sets/set.ts';
import { readSetLink } from './set-link.ts';

/** The set that most of the hand-ins are of, by the link in them; null where none tells. */
export async function setOfMost(found: readonly Found[]): Promise<TaskSet | null> {
	const hashes = [...new Set(found.map(({ handIn }) => handIn.hash))];
	const groups = hashes
		.map((hash) => found.filter(({ handIn }) => handIn.hash === hash))
		.sort((a, b) => b.length - a.length);
	for (const group of groups) {
		const links = new Set(group.map(({ handIn }) => handIn.set));
		for (const link of links) {
			const reading = await readSetLink(link);
			if (reading.ok && setHash(reading.set) === group[0]?.handIn.hash) return reading.set;
		}
	}
	return null;
}
