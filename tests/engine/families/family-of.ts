import { loadFamily } from '../../../src/lib/engine/families/catalogue.ts';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import type { Family } from '../../../src/lib/engine/families/family.ts';

/** The family with this id, as the app uses it. */
export function familyOf(id: string): Promise<Family> {
	const card = cards.find((one) => one.id === id);
	if (!card) throw new Error(`no family: ${id}`);
	return loadFamily(card);
}
