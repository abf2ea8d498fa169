import { basename } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Plugin, Rolldown } from 'vite';

/** What the chunking tells about a module, as far as it is needed here. */
interface Graph {
	getModuleInfo(id: string): {
		readonly code: string | null;
		readonly importedIds: readonly string[];
		readonly dynamicallyImportedIds: readonly string[];
	} | null;
}

/** What a further file costs beside what is in it, in bytes: its imports, and what compresses less. */
const perFile = 330;

/** What a family counts at most: one that is drawn by the methods of many would have all load them. */
const mostShare = 12;

/** More files than there will be; the build makes only those that something is in. */
const mostFiles = 200;

/**
 * What Svelte needs for bound fields, actions, attachments, styles that are set and blocks that wait:
 * no task has them before it is answered, and Svelte's list of all it has would bring them along.
 */
const laterSvelte =
	/\/svelte\/src\/internal\/(?:client\/dom\/(?:elements\/(?:actions|attachments|style|bindings\/(?!this|shared)[\w-]+)|blocks\/await)\.js|shared\/attributes\.js\?style)$/;

/**
 * Has the browser compile all functions of a file while it loads, beside the page's own thread. Left
 * to when each is first called, that took a fifth of what a start without a network takes.
 * https://v8.dev/blog/explicit-compile-hints
 */
const compileAll = '//# allFunctionsCalledOnLoad\n';

/** What marks the first answer and shows its verdict, fetched while the task is read. */
const verdictParts = /\/src\/lib\/(?:engine\/marking|ui\/sheet)\//;

/** Characters of a file from which on that is worth its line. */
const worthCompiling = 4000;

/** SvelteKit's own part, which starts every page. */
const kitStart = /\/@sveltejs\/kit\/src\/runtime\/client\/client\.js$/;

/** What is put into files here: the project's own modules, and the parts of SvelteKit that pages import. */
const placed = /\/src\/lib\/|\/@sveltejs\/kit\/src\/runtime\/(?:app|client)\//;

/** Path of a family. */
const familyFile = /\/engine\/families\/[\w-]+\/([\w-]+)\.ts$/;

/** The file that a module goes into. */
interface Place {
	readonly place: number;
	readonly name: string;
}

/** Modules that go into one file, and the families that load it. */
interface Group {
	readonly modules: readonly string[];
	readonly users: ReadonlySet<string>;
	/** Bytes, compressed. */
	readonly weight: number;
}

/**
 * Puts what the first task needs into few files: left alone it comes in dozens of small ones, which
 * weigh a fifth more after compression. The project's own modules that a page imports, straight or
 * through others, go into one. What several families share goes together with what nearly the same
 * families share, where loading a little too much costs less than a further file. Families that load
 * much count for more, since it is the heaviest that keep somebody waiting.
 *
 * @param pages paths of the modules of the page and of what stands around it
 */
export function firstChunk(...pages: readonly string[]): Plugin {
	let places: Map<string, Place> | undefined;
	// A file takes in what its modules import and no file before it has: those of most users first.
	const later = {
		priority: mostFiles + 1,
		name: 'later-svelte',
		test: laterSvelte,
		includeDependenciesRecursively: false
	};
	const inPlaces = Array.from({ length: mostFiles }, (_, place) => ({
		priority: mostFiles - place,
		name: (id: string, graph: Graph) => {
			places ??= placesOf(pages, graph);
			const at = places.get(id);
			return at?.place === place ? at.name : null;
		}
	}));
	return {
		name: 'first-chunk',
		// A file that leaves its modules' imports to others asks for entries that may export more.
		options: (options) => ({ ...options, preserveEntrySignatures: 'allow-extension' }),
		// They declare and do nothing by themselves; else the first file would import them all the same.
		transform: {
			filter: { id: laterSvelte },
			handler: (code) => ({ code, map: null, moduleSideEffects: false })
		},
		outputOptions(options) {
			if (this.environment.name !== 'client') return null;
			places = undefined;
			return {
				...options,
				// Names are most of what small files hold, and do not compress.
				chunkFileNames: shorter(options.chunkFileNames),
				assetFileNames: nameless(options.assetFileNames),
				codeSplitting: { groups: [later, ...inPlaces] }
			};
		},
		generateBundle: {
			// Vite puts something of its own at the top before.
			order: 'post',
			handler(_, bundle) {
				if (this.environment.name !== 'client') return;
				const isEarly = (id: string) =>
					places?.has(id) || kitStart.test(id) || verdictParts.test(id);
				for (const file of Object.values(bundle)) {
					if (file.type !== 'chunk') continue;
					if (file.moduleIds.some((id) => familyFile.test(id))) file.code += further(file, bundle);
					if (file.code.length < worthCompiling) continue;
					if (file.isEntry || file.moduleIds.some(isEarly)) file.code = compileAll + file.code;
				}
			}
		}
	};
}

/**
 * Imports of what a family's imports import themselves: found only in those, it is asked for a round trip
 * later.
 */
function further(family: Rolldown.OutputChunk, bundle: Rolldown.OutputBundle): string {
	const seen = new Set([family.fileName, ...family.imports]);
	const importsOf = (name: string) => {
		const file = bundle[name];
		return file?.type === 'chunk' ? file.imports : [];
	};
	const deeper = family.imports.flatMap(importsOf).filter((name) => !seen.has(name));
	return [...new Set(deeper)].map((name) => `import"./${basename(name)}";`).join('');
}

/** File names with seven of the eight letters of their hashes; with fewer the build runs out of names. */
function shorter<Names>(names: Names): Names | string {
	return typeof names === 'string' ? names.replace('[hash]', '[hash:7]') : names;
}

/** The same for style sheets and letters: every file that imports parts of pages lists theirs. */
function nameless<Names>(names: Names): Names | string {
	return typeof names === 'string' ? names.replace('[name].[hash]', '[hash:6]') : names;
}

/** The file that a module belongs to, by its id, those that more families load first. */
function placesOf(pages: readonly string[], graph: Graph): Map<string, Place> {
	const own = new Set(pages.flatMap((page) => [...reached(page, graph)]));
	const families = familiesFrom(own, graph);
	const users = new Map<string, string[]>();
	for (const family of families) {
		for (const id of reached(family, graph)) users.set(id, [...(users.get(id) ?? []), family]);
	}
	const shared = [...users].filter(([id]) => !own.has(id));
	const first: Group = { modules: [...own], users: new Set(families), weight: 0 };
	const sets = alike(shared, graph);
	const groups = together([first, ...sets], sharesOf(families, sets));
	const inOrder = [...groups].sort((one, other) => other.users.size - one.users.size);
	return new Map(
		inOrder.flatMap(({ modules }, place) => {
			// A family's own file goes by its name, others by their place.
			const family = modules.map((id) => familyFile.exec(id)?.[1]).find(Boolean);
			const name = place > 0 && family ? family : `first-${place}`;
			return modules.map((id): [string, Place] => [id, { place, name }]);
		})
	);
}

/** Modules that the very same families use, in a group. */
function alike(shared: readonly (readonly [string, readonly string[]])[], graph: Graph): Group[] {
	const sets = new Map<string, Group>();
	for (const [id, users] of shared) {
		const key = users.join();
		const { modules = [], weight = 0 } = sets.get(key) ?? {};
		const more = gzipSync(
			graph.getModuleInfo(id)?.code?.replace(/\/\*[^]*?\*\//g, '') ?? ''
		).length;
		sets.set(key, { modules: [...modules, id], users: new Set(users), weight: weight + more });
	}
	return [...sets.values()];
}

/** How much a byte counts that a family loads: more for those that load much. */
type Shares = ReadonlyMap<string, number>;

function sharesOf(families: readonly string[], groups: readonly Group[]): Shares {
	const loads = families.map((family) => {
		const own = groups.filter(({ users }) => users.has(family));
		return own.reduce((sum, { weight }) => sum + weight, 0);
	});
	const mean = loads.reduce((sum, load) => sum + load, 0) / loads.length;
	const share = (load: number) => Math.min(mostShare, (load / mean) ** 5);
	return new Map(families.map((family, i) => [family, share(loads[i] ?? 0)]));
}

/** The groups with those made one that then cost less, over all families; the first stays first. */
function together(groups: readonly Group[], shares: Shares): readonly Group[] {
	const pairs = groups.flatMap((one, i) =>
		groups.slice(i + 1).map((other) => [one, other] as const)
	);
	const [best] = pairs
		.filter(([one, other]) => !isFamilys(one) && !isFamilys(other))
		.map(([one, other]) => ({ one, other, both: joined(one, other) }))
		.map((pair) => ({ ...pair, saved: gain(pair, shares) }))
		.sort((a, b) => b.saved - a.saved);
	if (!best || best.saved <= 0) return groups;
	const { one, other, both } = best;
	return together(
		groups.filter((group) => group !== other).map((group) => (group === one ? both : group)),
		shares
	);
}

/** What only one family loads is no burden for others. */
function isFamilys({ users }: Group): boolean {
	return users.size === 1;
}

interface Pair {
	readonly one: Group;
	readonly other: Group;
	readonly both: Group;
}

function gain({ one, other, both }: Pair, shares: Shares): number {
	return cost(one, shares) + cost(other, shares) - cost(both, shares);
}

function joined(one: Group, other: Group): Group {
	return {
		modules: [...one.modules, ...other.modules],
		users: new Set([...one.users, ...other.users]),
		weight: one.weight + other.weight
	};
}

/** Bytes that all families together load of it, each by its share. */
function cost({ users, weight }: Group, shares: Shares): number {
	const counted = [...users].reduce((sum, family) => sum + (shares.get(family) ?? 0), 0);
	return counted * (weight + perFile);
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
	return new Set([...found].filter((id) => placed.test(id)));
}
