import { plainKind } from '../quantity/kinds/plain.ts';
import type { Kind } from '../quantity/kinds/kind.ts';
import { listed } from '../quantity/kinds/list.ts';
import { compiledOf } from './compiled.ts';
import type { Method } from './method.ts';

const kinds = new WeakMap<Method, Map<string, Kind>>();

/**
 * The kind of a given or a step of a method.
 *
 * @throws Error when the method has neither of that name
 */
export function kindAt(method: Method, key: string): Kind {
	const ofMethod = kinds.get(method) ?? new Map<string, Kind>();
	kinds.set(method, ofMethod);
	const known = ofMethod.get(key) ?? newKind(method, key);
	ofMethod.set(key, known);
	return known;
}

function newKind(method: Method, key: string): Kind {
	const given = method.given[key];
	if (given) return given.kind;
	const step = method.steps[key];
	const compiled = compiledOf(method).steps[key];
	if (!step || !compiled) throw new Error(`unknown step: ${method.id}.${key}`);
	return kindGiven(step.kind, compiled);
}

/** The kind that a formula gives: the one named for it or the plain one, and along a list a list. */
export function kindGiven(
	named: Kind | null,
	{ dimension, list }: { dimension: string; list: boolean }
): Kind {
	const kind = named ?? plainKind(dimension);
	return list && !kind.isList ? listed(kind) : kind;
}
