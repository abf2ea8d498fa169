import type { Plugin } from 'vite';

/** What the chunking tells about a module, as far as it is needed here. */
interface Graph {
	getModuleInfo(id: string): {
		readonly importedIds: readonly string[];
		readonly dynamicallyImportedIds: readonly string[];
	} | null;
}

/** A module that so many families import belongs to the first load of nearly every task. */
const most = 14;

/** One that so many import is shared across topics. */
const several = 5;

/** In a topic of so few families, what two of them import is in one file for all. */
const few = 4;

/** Path of a family, with its topic. */
const familyFile = /\/engine\/families\/([\w-]+)\/[\w-]+\.ts$/;

/**
 * Puts what the first task needs into few files: left alone it comes in dozens of small ones, which
 * weigh a fifth more after compression. The project's own modules that a page imports, straight or
 * through others, and those that most families import go into one; what fewer families share goes
 * into one for each topic.
 *
 * @param page path of the page's module
 */
export function firstChunk(page: string): Plugin {
	let names: Map<string, string> | undefined;
	const name = (id: string, graph: Graph) => {
		names ??= chunkNames(page, graph);
		return names.get(id) ?? null;
	};
	return {
		name: 'first-chunk',
		outputOptions(options) {
			if (this.environment.name !== 'client') return null;
			names = undefined;
			return { ...options, codeSplitting: { groups: [{ name }] } };
		}
	};
}

/** The chunk that a module belongs to, by its id; none where it stays as it is. */
function chunkNames(page: string, graph: Graph): Map<string, string> {
	const own = reached(page, graph);
	const topics = new Map<string, string[]>();
	const families = familiesFrom(own, graph);
	for (const family of families) {
		for (const id of reached(family, graph)) {
			topics.set(id, [...(topics.get(id) ?? []), topicOf(family)]);
		}
	}
	const shared = [...topics].flatMap(([id, users]): [string, string][] => {
		if (own.has(id) || users.length < 2) return [];
		if (users.length >= most) return [[id, 'first']];
		if (users.length >= several) return [[id, `shared-${mostOften(users)}`]];
		const [topic = ''] = users;
		const isSmall = families.filter((one) => topicOf(one) === topic).length <= few;
		return isSmall && new Set(users).size === 1 ? [[id, `within-${topic}`]] : [];
	});
	return new Map([...[...own].map((id): [string, string] => [id, 'first']), ...shared]);
}

function topicOf(family: string): string {
	return familyFile.exec(family)?.[1] ?? '';
}

/** The families that these modules load when one is wanted. */
function familiesFrom(own: ReadonlySet<string>, graph: Graph): string[] {
	const later = [...own].flatMap((id) => graph.getModuleInfo(id)?.dynamicallyImportedIds ?? []);
	return [...new Set(later)].filter((id) => familyFile.test(id));
}

/** The project's own modules that one imports, straight or through others, and itself. */
function reached(start: string, graph: Graph): Set<string> {
	const found = new Set<string>();
	function follow(id: string) {
		if (found.has(id)) return;
		found.add(id);
		graph.getModuleInfo(id)?.importedIds.forEach(follow);
	}
	follow(start);
	return new Set([...found].filter((id) => id.includes('/src/lib/')));
}

function mostOften(words: readonly string[]): string {
	const counted = words.map((word) => [words.filter((other) => other === word).length, word]);
	const [[, first = ''] = []] = counted.sort(([a = 0], [b = 0]) => Number(b) - Number(a));
	return String(first);
}
