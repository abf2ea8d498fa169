import { isList, type Value } from '../quantity/value.ts';
import type { Method, Origin, SlipNotes } from './method.ts';
import type { Strain } from './strain.ts';
import { isTold, toldOf } from './told.ts';
import type { Part, Slot } from './trade-function.ts';

/** Values by key: the givens and the steps worked so far, in base units. */
export type Values = Readonly<Record<string, Value>>;

/** One formula, compiled when the app is built: what it computes. What it looks like is in `told.ts`. */
export interface Formula {
	/** `right` is read by outcomes alone, which tell the student's values beside the right ones. */
	readonly run: (values: Values, right: Values) => Value | boolean;
	/** The names it is worked from, and whether each is a list. */
	readonly needs: Readonly<Record<string, boolean>>;
}

/** A formula that gives a value. */
export interface CompiledSlip extends Formula {
	/** Whether it is worked for every member of a list. */
	readonly list: boolean;
}

export interface CompiledStep extends CompiledSlip, Strain {
	/** Name of the dimension. */
	readonly dimension: string;
}

export interface CompiledLimit {
	/** Name of the dimension. */
	readonly dimension: string;
	readonly value: CompiledSlip;
	readonly bound: CompiledSlip;
}

/** The formulas that one method or piece wrote itself, but for those that tell of an answer. */
export interface CompiledUnit {
	/** The values of a method in an object with a slot for every given and step. */
	readonly copy?: (values: Values) => Record<string, Value>;
	readonly steps: Readonly<Record<string, CompiledStep>>;
	readonly slips: Readonly<Record<string, CompiledSlip & Partial<SlipNotes>>>;
	readonly limits: readonly CompiledLimit[];
}

/** A step or a slip in the names of a method, ready to be worked. */
export interface Work {
	readonly run: (values: Values) => Value;
	/** What it looks like; on a page only after `tell` (families/tell.ts). */
	readonly show: () => readonly Part[];
	/** Names in the method that it is worked from. */
	readonly needs: readonly string[];
}

export interface StepWork extends Work, Strain {
	/** Name of the dimension. */
	readonly dimension: string;
	readonly list: boolean;
}

/** A method made ready for working it many times. */
export interface Ready {
	/**
	 * The values in an object with a slot for every given and step, so that all of them have one
	 * shape: working a method many times is then several times faster.
	 */
	readonly copy: (values: Values) => Record<string, Value>;
	readonly steps: Readonly<Record<string, StepWork>>;
	readonly slips: Readonly<Record<string, Work>>;
	/** The steps in the order they are worked. */
	readonly order: readonly { readonly key: string; readonly run: Work['run'] }[];
	readonly slipIds: readonly string[];
	/** Place in `order` of the step that each slip is made in. */
	readonly slipAt: Readonly<Record<string, number>>;
}

const units = new Map<string, CompiledUnit>();
const files = new Map<string, string>();

/**
 * Called by the code that the build adds to every file of `methods/`.
 *
 * @param file in `methods/`, without `.ts`
 */
export function addCompiled(id: string, compiled: CompiledUnit, file = id): void {
	units.set(id, compiled);
	files.set(id, file);
}

/** Files of `methods/` that are loaded, and what they tell is not. */
export function untold(): string[] {
	return [...new Set([...files].flatMap(([id, file]) => (isTold(id) ? [] : [file])))];
}

/** The formulas a method or piece wrote itself. */
export function unitOf(id: string): CompiledUnit {
	const unit = units.get(id);
	if (!unit) {
		throw new Error(
			`not compiled: ${id}; methods stand in engine/methods and pieces in its folder pieces, each exported under its name`
		);
	}
	return unit;
}

const ready = new WeakMap<Method, Ready>();

export function compiledOf(method: Method): Ready {
	const known = ready.get(method);
	if (known) return known;
	const fresh = made(method);
	ready.set(method, fresh);
	return fresh;
}

/** Lets a method that is worked in another way than by its formulas stand beside the others. */
export function setReady(method: Method, work: Ready): void {
	ready.set(method, work);
}

function made(method: Method): Ready {
	const lists = new Map(Object.entries(method.given).map(([key, { kind }]) => [key, kind.isList]));
	const steps: Record<string, StepWork> = {};
	for (const [key, { from }] of Object.entries(method.steps)) {
		const step = unitOf(from.unit).steps[from.key];
		if (!step) throw new Error(`not compiled: ${from.unit}, step ${from.key}`);
		steps[key] = boundStep(step, from, lists, () => toldOf(from.unit).steps[from.key] ?? []);
		lists.set(key, steps[key].list);
	}
	const slips = Object.entries(method.slips).map(([id, { from, step }]) => {
		const slip = unitOf(from.unit).slips[from.key];
		const at = method.steps[step]?.from;
		const whole = at && unitOf(at.unit).steps[at.key];
		if (!slip || !whole) throw new Error(`not compiled: ${from.unit}, slip ${from.key}`);
		const show = () => toldOf(from.unit).slips[from.key]?.show ?? [];
		return [id, bound(slip, from, lists, show, whole)] as const;
	});
	return readied(method, steps, Object.fromEntries(slips), unitCopy(method));
}

/** Steps and slips put in order for working. */
export function readied(
	method: Method,
	steps: Readonly<Record<string, StepWork>>,
	slips: Readonly<Record<string, Work>>,
	copy: Ready['copy']
): Ready {
	const keys = Object.keys(method.steps);
	return {
		copy,
		steps,
		slips,
		order: Object.entries(steps).map(([key, { run }]) => ({ key, run })),
		slipIds: Object.keys(slips),
		slipAt: Object.fromEntries(
			Object.entries(method.slips).map(([id, { step }]) => [id, keys.indexOf(step)])
		)
	};
}

/** The build writes a copy for a method in a file; one joined on the page copies by its keys. */
function unitCopy(method: Method): Ready['copy'] {
	return (
		units.get(method.id)?.copy ??
		copyOf([...Object.keys(method.given), ...Object.keys(method.steps)])
	);
}

/** Copies into objects of one shape; what has no value yet is undefined in them. */
export function copyOf(keys: readonly string[]): Ready['copy'] {
	const blank: object = Object.fromEntries(keys.map((key) => [key, undefined]));
	return (values) => ({ ...blank, ...values });
}

function boundStep(
	step: CompiledStep,
	from: Origin,
	lists: ReadonlyMap<string, boolean>,
	shown: Work['show']
): StepWork {
	const along = broadcast(step, from, lists).length > 0;
	return { ...step, ...bound(step, from, lists, shown, step), list: step.list || along };
}

/** Names of the formula that are one value where it was written and a list in this method. */
function broadcast(
	{ needs }: Pick<Formula, 'needs'>,
	{ names }: Origin,
	lists: ReadonlyMap<string, boolean>
): string[] {
	return Object.entries(needs)
		.filter(([name, list]) => !list && lists.get(names[name] ?? name) === true)
		.map(([name]) => name);
}

/** @param whole the step the formula stands in: a slip runs along the lists of its step too */
function bound(
	formula: CompiledSlip,
	from: Origin,
	lists: ReadonlyMap<string, boolean>,
	shown: Work['show'],
	whole: CompiledStep
): Work {
	const { names } = from;
	const outer = (name: string) => names[name] ?? name;
	const needs = Object.keys(formula.needs).map(outer);
	const along = [...broadcast(whole, from, lists), ...broadcast(formula, from, lists)];
	const show = () => shown().map((part) => renamedPart(part, names));
	const run = formula.run as (values: Values) => Value;
	const [first] = along;
	if (first !== undefined) {
		return { run: alongList(formula, outer, outer(first), new Set(along)), show, needs };
	}
	// One value for all where the step itself makes a list: it is told once for every member.
	if (whole.list && !formula.list) {
		const like = whole.run as (values: Values) => readonly number[];
		const repeated = (values: Values) => like(values).map(() => Number(run(values)));
		return { run: inNames(repeated, { ...whole.needs, ...formula.needs }, names), show, needs };
	}
	return { run: inNames(run, formula.needs, names), show, needs };
}

function renamedPart(part: Part, names: Origin['names']): Part {
	if (typeof part === 'string') return part;
	const name = names[part.name];
	return name === undefined ? part : ({ ...part, name } satisfies Slot);
}

/** The formula with its values fetched from their names in the method. */
export function inNames<T>(
	run: (values: Values) => T,
	needs: Formula['needs'],
	names: Origin['names']
): (values: Values) => T {
	const pairs = Object.keys(needs).map((name) => [name, names[name] ?? name] as const);
	if (pairs.every(([inner, outer]) => inner === outer)) return run;
	return (values) => run(fetched(values, pairs));
}

function fetched(values: Values, pairs: readonly (readonly [string, string])[]): Values {
	const inner: Record<string, Value> = {};
	for (const [name, outer] of pairs) inner[name] = values[outer] ?? '';
	return inner;
}

function alongList(
	formula: Formula,
	outer: (name: string) => string,
	first: string,
	along: ReadonlySet<string>
): Work['run'] {
	const pairs = Object.keys(formula.needs).map((name) => [name, outer(name)] as const);
	return (values) => {
		const list = values[first];
		const length = isList(list) ? list.length : 0;
		const worked: number[] = [];
		for (let i = 0; i < length; i++) {
			const inner: Record<string, Value> = {};
			for (const [name, outer] of pairs) {
				const value = values[outer] ?? '';
				inner[name] = along.has(name) && isList(value) ? (value[i] ?? NaN) : value;
			}
			worked.push(Number(formula.run(inner, inner)));
		}
		return worked;
	};
}
