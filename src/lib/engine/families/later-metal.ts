import type { FamilyBody } from './family.ts';

type Metal = NonNullable<FamilyBody['metal']>;

/** What is drawn of answers and has not been fetched yet. */
const waiting = new Set<() => Promise<void>>();

/**
 * Stands in a family on a page in place of what draws answers (src/plugins/lighten.ts): that is fetched
 * with the rest that is told of answers (tell.ts), not before the first task is shown. Drawing too
 * early throws.
 */
export function laterMetal(load: () => Promise<{ readonly metal: Metal }>): Metal {
	let metal: Metal | null = null;
	const fetched = async () => {
		({ metal } = await load());
		waiting.delete(fetched);
	};
	waiting.add(fetched);
	return (seen, say) => {
		if (!metal) throw new Error('what answers do to the metal has not been fetched: tell() first');
		return metal(seen, say);
	};
}

/** Fetches all that is waiting; what could not be fetched is asked for again next time. */
export async function fetchMetal(): Promise<void> {
	await Promise.all([...waiting].map((fetched) => fetched()));
}
