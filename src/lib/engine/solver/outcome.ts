import type { Kind } from '../quantity/kinds/kind.ts';
import type { LengthUnit, Value } from '../quantity/value.ts';
import { inNames, type Values } from './compiled.ts';
import { evaluateAsFar } from './as-far.ts';
import { kindGiven } from './kind-at.ts';
import type { Method, Outcome } from './method.ts';
import { textAt } from './show.ts';
import { type CompiledOutcome, toldOf } from './told.ts';
import { orNull } from './trade-function.ts';

/** The method worked with one answer in place, and what that shows. */
export interface Seen {
	/** The step that was answered. */
	readonly key: string;
	readonly entered: Value;
	/**
	 * Givens and steps, with the answer in place and the steps after it following from it, as far as
	 * they can be worked.
	 */
	readonly values: Values;
	/** The right values. */
	readonly right: Values;
	/** Values that only show what the answer does, by name. */
	readonly shows: Values;
	/** Id of the case that holds. */
	readonly case: string;
	/** The sentence of that case. */
	readonly says: string;
}

/**
 * What an answer to a step does to the metal, by the method; null where the method tells nothing
 * of that step, or what it tells cannot be worked from the answer.
 *
 * @param entered the answer, in base units
 * @param exact whether the right answer is known, so that an amount may be told to the last digit:
 *   `about {about}` is then the size of the value `more` among those that the outcome shows
 */
export function seenAt(
	method: Method,
	given: Values,
	right: Values,
	key: string,
	entered: Value,
	units: LengthUnit = 'in',
	exact = false
): Seen | null {
	const told = method.outcomes.find(({ at }) => at.includes(key));
	if (!told) return null;
	const names = { ...told.from.names, entered: key };
	return orNull(() => {
		const values = evaluateAsFar(method, given, { values: { [key]: entered } });
		return tell(method, { ...told, from: { ...told.from, names } }, values, right, key, {
			units,
			exact
		});
	});
}

function tell(
	method: Method,
	told: Outcome,
	values: Values,
	right: Values,
	key: string,
	{ units, exact }: { readonly units: LengthUnit; readonly exact: boolean }
): Seen | null {
	const { from } = told;
	const compiled = toldOf(from.unit).outcomes[Number(from.key)]?.compiled;
	if (!compiled) throw new Error(`not compiled: ${from.unit}, outcome ${Number(from.key) + 1}`);
	const { names, needs } = readBy(compiled, told);
	const inner = inNames((v) => v, needs, from.names);
	const [own, good] = [inner(values), inner(right)];
	if (names.some((name) => own[name] === '')) return null;
	const shows: Record<string, Value> = {};
	const kinds = new Map<string, Kind>();
	const all: Record<string, Value> = { ...own };
	for (const [name, shown] of Object.entries(compiled.shows)) {
		const value = shown.run(all, good) as Value;
		const kind = kindGiven(told.shows[name]?.kind ?? null, shown);
		if (!kind.isSound(value)) return null;
		kinds.set(name, kind);
		shows[name] = value;
		all[name] = value;
	}
	const found = Object.entries(compiled.cases).find(([, test]) => !test || test.run(all, good));
	const text = found && told.cases[found[0]];
	if (!found || !text) return null;
	const write = writer(method, told, { all, good, key }, kinds, units);
	const off = exact && typeof shows.more === 'number' ? Math.abs(shows.more) : null;
	const template =
		off === null
			? text.says
			: text.says.replace(coarse, () => kinds.get('more')?.write(off, units) ?? '');
	const says = template.replace(/\{([\w.]+)\}/g, (_, name: string) => write(name));
	const entered = values[key] ?? '';
	return { key, entered, values, right, shows, case: found[0], says };
}

function writer(
	method: Method,
	{ from }: Outcome,
	{ all, good, key }: { all: Values; good: Values; key: string },
	kinds: ReadonlyMap<string, Kind>,
	units: LengthUnit
): (name: string) => string {
	return (name) => {
		const plain = name.replace(/^right\./, '');
		const value = (plain === name ? all : good)[plain] ?? '';
		const kind = kinds.get(plain);
		if (kind) return kind.write(value, units);
		const outer = plain === 'entered' ? key : (from.names[plain] ?? plain);
		return textAt(method, outer, value, units);
	};
}

/** An amount told so coarsely that it does not give the answer away. */
const coarse = /(?:about|less than) \{about\}/;

/** What an outcome reads, found once: it reads the same in every method that takes it in. */
const reads = new WeakMap<CompiledOutcome, Reads>();

interface Reads {
	/** Names of givens, steps and right values, as they are written. */
	readonly names: readonly string[];
	/** The same plain, so that all are fetched at once. */
	readonly needs: Readonly<Record<string, boolean>>;
}

function readBy(compiled: CompiledOutcome, told: Outcome): Reads {
	const known = reads.get(compiled) ?? newReads(compiled, told);
	reads.set(compiled, known);
	return known;
}

function newReads({ shows, cases }: CompiledOutcome, told: Outcome): Reads {
	const used = [...Object.values(shows), ...Object.values(cases)].flatMap((one) =>
		Object.keys(one?.needs ?? {})
	);
	const said = Object.values(told.cases).flatMap(({ says }) => slotsIn(says));
	const names = ['entered', ...used, ...said].filter((name) => !Object.hasOwn(shows, name));
	const plain = names.map((name) => name.replace(/^right\./, ''));
	return { names, needs: Object.fromEntries(plain.map((name) => [name, false])) };
}

/** Names of the values that a sentence tells: `{out}`. */
export function slotsIn(says: string): string[] {
	return [...says.matchAll(/\{([\w.]+)\}/g)].map(([, name = '']) => name);
}
