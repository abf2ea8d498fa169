import { loadFamily } from '$lib/engine/families/catalogue.ts';
import type { Family } from '$lib/engine/families/family.ts';
import { cards } from '$lib/engine/families/topics.ts';
import { breath } from '../breath.ts';

/** Families that are asked for at once: all of them would hold a slow phone up for a tenth of a second. */
const atOnce = 4;

/** Every family, fetched a few at a time. */
export async function familiesInTurn(): Promise<Family[]> {
	const families: Promise<Family>[] = [];
	for (let first = 0; first < cards.length; first += atOnce) {
		const some = cards.slice(first, first + atOnce).map(loadFamily);
		// The first that fails is told at the end.
		for (const one of some) one.catch(() => {});
		families.push(...some);
		await breath();
	}
	return Promise.all(families);
}
