import type { Kind, Value } from '../quantity/kind.ts';
import type { Method } from './method.ts';
import type { Part } from './trade-function.ts';

/** Values by key: the givens and the steps worked so far, in base units. */
export type Values = Readonly<Record<string, Value>>;

/** One formula, compiled when the app is built: what it computes and what it looks like. */
export interface Formula {
	readonly run: (values: Values) => Value;
	readonly show: readonly Part[];
}

export interface CompiledStep extends Formula {
	readonly kind: Kind;
	/** Whether the formula is worked for every member of a list. */
	readonly list: boolean;
}

export interface CompiledMethod {
	readonly steps: Readonly<Record<string, CompiledStep>>;
	readonly slips: Readonly<Record<string, Formula>>;
	readonly limits: readonly Formula[];
}

interface Ordered extends CompiledMethod {
	/** Keys of the steps in the order they are worked. */
	readonly order: readonly string[];
}

const compiledMethods = new Map<string, Ordered>();

/** Called by the code that the build adds to every file of `methods/`. */
export function addCompiled(method: Method, compiled: CompiledMethod): void {
	compiledMethods.set(method.id, { ...compiled, order: Object.keys(compiled.steps) });
}

export function compiledOf(method: Method): Ordered {
	const compiled = compiledMethods.get(method.id);
	if (!compiled) throw new Error(`method not compiled: ${method.id}`);
	return compiled;
}
