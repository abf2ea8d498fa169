import { kindOf } from '../quantity/bridge.ts';
import type { Kind } from '../quantity/kinds/kind.ts';
import { compiledOf } from './compiled.ts';
import { plainStyle } from './given.ts';
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

/* BRIDGE, to go once methods name their kinds: a given or a step holds its own. */
function newKind(method: Method, key: string): Kind {
	const given = method.given[key];
	if (given) return kindOf({ ...given, asked: false });
	const step = method.steps[key];
	const compiled = compiledOf(method).steps[key];
	if (!step || !compiled) throw new Error(`unknown step: ${method.id}.${key}`);
	// The build has checked that the step gives values of its kind.
	if (step.kind) return step.kind as Kind;
	return kindOf({
		...step,
		...compiled,
		style: step.style ?? plainStyle(compiled.kind),
		asked: true
	});
}
