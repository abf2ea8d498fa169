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
	/**
	 * The values in an object with a slot for every given and step, so that all of them have one
	 * shape: working a method many times is then several times faster.
	 */
	readonly copy: (values: Values) => Record<string, Value>;
	readonly steps: Readonly<Record<string, CompiledStep>>;
	readonly slips: Readonly<Record<string, Formula>>;
	readonly limits: readonly Formula[];
}

/** A compiled method made ready for working it many times. */
interface Ready extends CompiledMethod {
	/** The steps in the order they are worked. */
	readonly order: readonly { readonly key: string; readonly run: Formula['run'] }[];
	readonly slipIds: readonly string[];
	/** Place in `order` of the step that each slip is made in. */
	readonly slipAt: Readonly<Record<string, number>>;
}

const compiledMethods = new Map<string, Ready>();

/** Called by the code that the build adds to every file of `methods/`. */
export function addCompiled(method: Method, compiled: CompiledMethod): void {
	const keys = Object.keys(compiled.steps);
	const slips = Object.entries(method.slips);
	compiledMethods.set(method.id, {
		...compiled,
		order: Object.entries(compiled.steps).map(([key, { run }]) => ({ key, run })),
		slipIds: slips.map(([id]) => id),
		slipAt: Object.fromEntries(slips.map(([id, slip]) => [id, keys.indexOf(slip.step)]))
	});
}

export function compiledOf(method: Method): Ready {
	const compiled = compiledMethods.get(method.id);
	if (!compiled) throw new Error(`method not compiled: ${method.id}`);
	return compiled;
}
