import { gzipSync } from 'node:zlib';
import type { Plugin } from 'vite';

/** What the chunking tells about a module, as far as it is needed here. */
interface Module {
	readonly code: string | null;
	readonly importedIds: readonly string[];
	readonly dynamicallyImportedIds: readonly string[];
}

interface Graph {
	getModuleInfo(id: string): Module | null;
}

/**
 * Modules that go into one file, and who loads it: a page at once (`/plan/`), or a page later
 * (`/plan/ later`).
 */
interface Group {
	readonly modules: readonly string[];
	readonly users: ReadonlySet<string>;
	/** Bytes, compressed. */
	readonly weight: number;
}

/** What a further file costs beside what is in it, in bytes: on a slow device, a few milliseconds. */
const perFile = 1500;

/** Bytes, compressed: a file grows no further, so that no page waits long for what it needs first. */
const most = 16_000;

const pageFile = /\/src\/routes\/(?:.*\/)?\+(?:page|layout|error)\.svelte$/;

/**
 * Puts what pages load after their first task into fewer files: left alone, every set of users has
 * one of its own, most of them smaller than what asking for it costs. What nearly the same pages
 * load goes together where loading a little too much costs less than a further file. It leaves
 * alone what a group before it has taken.
 */
export function laterChunks(): Plugin {
	let names = new Map<string, string>();
	return {
		name: 'later-chunks',
		buildEnd() {
			if (this.environment.name !== 'client') return;
			const pages = [...this.getModuleIds()].filter((id) => pageFile.test(id));
			const groups = together(alike(usersOf(pages, this), this).filter(isLater));
			names = new Map(
				groups.flatMap(({ modules }, at) =>
					modules.length > 1 ? modules.map((id): [string, string] => [id, `later-${at}`]) : []
				)
			);
		},
		outputOptions(options) {
			if (this.environment.name !== 'client') return null;
			const before = typeof options.codeSplitting === 'object' ? options.codeSplitting.groups : [];
			const later = {
				priority: 0,
				name: (id: string) => names.get(id) ?? null,
				includeDependenciesRecursively: false
			};
			return { ...options, codeSplitting: { groups: [...(before ?? []), later] } };
		}
	};
}

/** Who loads each of the project's own modules. */
function usersOf(pages: readonly string[], graph: Graph): Map<string, Set<string>> {
	const users = new Map<string, Set<string>>();
	for (const page of pages) {
		const atOnce = new Set<string>();
		const later = new Set<string>();
		follow(page, atOnce, ({ importedIds }) => importedIds, graph);
		const all = ({ importedIds, dynamicallyImportedIds }: Module) => [
			...importedIds,
			...dynamicallyImportedIds
		];
		follow(page, later, all, graph);
		for (const id of later) {
			const known = users.get(id) ?? new Set();
			users.set(id, known.add(atOnce.has(id) ? page : `${page} later`));
		}
	}
	return users;
}

/** Adds to `found` the project's own modules that are reached from one, and itself. */
function follow(
	id: string,
	found: Set<string>,
	next: (module: Module) => readonly string[],
	graph: Graph
): void {
	if (found.has(id) || !id.includes('/src/') || id.includes('/node_modules/')) return;
	found.add(id);
	const module = graph.getModuleInfo(id);
	if (module) for (const other of next(module)) follow(other, found, next, graph);
}

/** Not what every page loads at once: it is kept small for the first task. */
function isLater({ users }: Group): boolean {
	return ![...users].some((user) => /\/src\/routes\/\+(?:layout|error)\.svelte$/.test(user));
}

/** Modules that the very same users have, in a group. */
function alike(users: ReadonlyMap<string, ReadonlySet<string>>, graph: Graph): Group[] {
	const groups = new Map<string, Group>();
	for (const [id, own] of users) {
		const key = [...own].sort().join();
		const { modules = [], weight = 0 } = groups.get(key) ?? {};
		const code = graph.getModuleInfo(id)?.code?.replace(/\/\*[^]*?\*\//g, '') ?? '';
		groups.set(key, {
			modules: [...modules, id],
			users: own,
			weight: weight + gzipSync(code).length
		});
	}
	return [...groups.values()];
}

/** The groups with those made one that then cost less, over all users. */
function together(groups: readonly Group[]): readonly Group[] {
	let best: { saved: number; one: Group; other: Group } | undefined;
	for (const [i, one] of groups.entries()) {
		for (const other of groups.slice(i + 1)) {
			if (one.weight + other.weight > most) continue;
			const saved = cost(one) + cost(other) - cost(joined(one, other));
			if (saved > (best?.saved ?? 0)) best = { saved, one, other };
		}
	}
	if (!best) return groups;
	const { one, other } = best;
	const rest = groups.filter((group) => group !== one && group !== other);
	return together([...rest, joined(one, other)]);
}

function joined(one: Group, other: Group): Group {
	return {
		modules: [...one.modules, ...other.modules],
		users: new Set([...one.users, ...other.users]),
		weight: one.weight + other.weight
	};
}

/** Bytes that all users together load of it. */
function cost({ users, weight }: Group): number {
	return users.size * (weight + perFile);
}
