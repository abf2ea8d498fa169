import type { Kind } from './kind.ts';

/** The kind that each dimension has when nothing else is said, by the name that formulas have for it. */
const kinds = new Map<string, Kind>();

/** Makes a kind that of its dimension, for steps and limits that name none. */
export function plain<K extends Kind>(kind: K): K {
	kinds.set(kind.dimension.name, kind);
	return kind;
}

/**
 * The kind of a value in a dimension. Its file is loaded with the formulas that give one: the build
 * adds the import (src/plugins/compile-methods.ts), so that a page loads no other.
 */
export function plainKind(dimension: string): Kind {
	const kind = kinds.get(dimension);
	if (!kind) throw new Error(`no kind has the dimension ${dimension}: add it to kinds/all.ts`);
	return kind;
}
