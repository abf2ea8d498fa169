import type { Kind } from '../quantity/kinds/kind.ts';
import { unitOf } from './compiled.ts';
import type { Given } from './given.ts';
import { kindAt } from './kind-at.ts';
import { laidOutcome, laidSlip, notesOf, renamed } from './laid.ts';
import type { Limit, Method, Origin, Outcome, Slip, Step } from './method.ts';
import { named } from './write.ts';

/** A method as a part of a joined one. */
export interface JoinedPart {
	readonly method: Method;
	/** Given of the part → the earlier result it is fed from. */
	readonly feed: Readonly<Record<string, string>>;
	/** Given or step of the part → the name it goes by in the joined method. */
	readonly as: Readonly<Record<string, string>>;
	/** Label of a step in the joined method, where the part's own says too little there. */
	readonly labels: Readonly<Record<string, string>>;
	/** Slips that are met more or less often in the joined method than in the part alone. */
	readonly rare: Readonly<Record<string, boolean>>;
	/** The last step that is taken over; null for all of them. */
	readonly until: string | null;
}

interface PartNotes {
	labels?: JoinedPart['labels'];
	rare?: JoinedPart['rare'];
	until?: string;
}

/** A part: `part(rivetLength, { D: 'diameter' })` takes its diameter from an earlier step. */
export function part(
	method: Method,
	feed: JoinedPart['feed'] = {},
	as: JoinedPart['as'] = {},
	{ labels = {}, rare = {}, until }: PartNotes = {}
): JoinedPart {
	return { method, feed, as, labels, rare, until: until ?? null };
}

/** The steps that a part brings, by their keys in its method. */
export function stepsIn({ method, until }: JoinedPart): string[] {
	const keys = Object.keys(method.steps);
	return until === null ? keys : keys.slice(0, keys.indexOf(until) + 1);
}

/**
 * Joins methods into one, by feeding results of earlier parts into givens of later ones. Givens of
 * one name are one given; a step that two parts work alike is worked once. What holds for a method
 * (slips, follow-through, limits, working) then holds over the whole.
 *
 * @throws Error naming the parts and what to do, when they do not fit together
 */
export function join(parts: { id: string; title: string; parts: readonly JoinedPart[] }): Method {
	const whole = new Whole(parts.id);
	for (const one of parts.parts) whole.add(one);
	return whole.method(parts.title);
}

class Whole {
	readonly #id: string;
	readonly #given: Record<string, Given> = {};
	readonly #steps: Record<string, Step> = {};
	readonly #results = new Map<string, Kind>();
	readonly #slips: Slip[] = [];
	readonly #limits: Limit[] = [];
	readonly #outcomes: Outcome[] = [];

	constructor(id: string) {
		this.#id = id;
	}

	add(one: JoinedPart): void {
		const { method, labels } = one;
		const names = this.#namesOf(one);
		const taken = stepsIn(one);
		for (const key of taken) {
			const step = method.steps[key] as Step;
			const name = names[key] ?? key;
			const laid = {
				...step,
				label: labels[key] ?? step.label,
				formula: renamed(step.formula, names),
				from: within(step.from, names)
			};
			if (!this.#isThere(method, name, laid)) this.#steps[name] = laid;
			this.#results.set(name, kindAt(method, key));
		}
		for (const slip of Object.values(method.slips)) {
			if (taken.includes(slip.step)) this.#addSlip(slip, one.rare[slip.id] ?? slip.rare, names);
		}
		for (const limit of method.limits) this.#limits.push(joinedLimit(limit, names));
		for (const outcome of method.outcomes) {
			const at = outcome.at.filter((key) => taken.includes(key)).map((key) => names[key] ?? key);
			if (at.length === 0) continue;
			this.#outcomes.push(laidOutcome(outcome, at, within(outcome.from, names)));
		}
	}

	method(title: string): Method {
		return {
			id: this.#id,
			title,
			given: this.#given,
			steps: this.#steps,
			slips: named(this.#slips),
			limits: this.#limits,
			outcomes: this.#outcomes,
			inverses: {}
		};
	}

	/** Adds a slip, unless a part before it has the same step and so the slip already. */
	#addSlip(slip: Slip, rare: boolean, names: Readonly<Record<string, string>>): void {
		const step = names[slip.step] ?? slip.step;
		if (this.#slips.some((one) => one.step === step && one.id === slip.id)) return;
		const { id, from } = slip;
		const notes = { ...notesOf(slip), rare };
		this.#slips.push(laidSlip(slip, names, { step, ...notes, id, from: within(from, names) }));
	}

	/** Whether the very same step is there already; another one of its name is refused. */
	#isThere(method: Method, name: string, laid: Step): boolean {
		const there = this.#steps[name];
		if (!there && !Object.hasOwn(this.#given, name)) return false;
		if (there && isSame(there.from, laid.from)) return true;
		throw new Error(
			faultIn(
				this.#id,
				`${method.id} has a step ${name}, and so has a part before it: give it another name, as: { ${name}: … }`
			)
		);
	}

	/** The part's names → the whole's, with its open givens added to the whole's. */
	#namesOf({ method, feed, as, labels, until }: JoinedPart): Record<string, string> {
		const told = [feed, as, labels].flatMap((one) => Object.keys(one));
		for (const key of until === null ? told : [...told, until]) {
			const own = Object.hasOwn(method.given, key) || Object.hasOwn(method.steps, key);
			if (!own)
				throw new Error(
					faultIn(this.#id, `${method.id} has neither a given nor a step called ${key}`)
				);
		}
		const names: Record<string, string> = { ...as };
		for (const [key, given] of Object.entries(method.given)) {
			const from = feed[key];
			if (from === undefined) this.#addGiven(method, key, as[key] ?? key, given);
			else {
				this.#checkFeed(method, key, from, given);
				names[key] = from;
			}
		}
		return names;
	}

	#addGiven(method: Method, key: string, name: string, given: Given): void {
		if (this.#results.has(name)) {
			throw new Error(
				faultIn(
					this.#id,
					`${method.id} takes ${key}, and ${name} is a result before it: feed it, { ${key}: '${name}' }, or give it another name, as: { ${key}: … }`
				)
			);
		}
		const there = this.#given[name];
		if (there && !isLike(there.kind, given.kind)) {
			throw new Error(
				faultIn(
					this.#id,
					`${method.id} takes ${name} as another kind of value than a part before it: give it another name, as: { ${key}: … }`
				)
			);
		}
		this.#given[name] = there ?? given;
	}

	#checkFeed(method: Method, key: string, from: string, given: Given): void {
		const result = this.#results.get(from) ?? this.#given[from]?.kind;
		if (!result) {
			throw new Error(
				faultIn(this.#id, `${method.id} takes ${key} from ${from}, which no part before it gives`)
			);
		}
		if (!isLike(result, given.kind)) {
			throw new Error(
				faultIn(
					this.#id,
					`${method.id} takes ${key} as ${what(given.kind)}; ${from} is ${what(result)}`
				)
			);
		}
	}
}

function faultIn(id: string, why: string): string {
	return `${id}: ${why}.`;
}

/** Whether a value of one kind can be worked on as one of the other. */
function isLike(one: Kind, other: Kind): boolean {
	return one.dimension === other.dimension && one.isList === other.isList;
}

function what({ isList, dimension }: Kind): string {
	return `${isList ? 'a list' : 'one value'} of the kind ${dimension.name}`;
}

/** An origin seen from the joined method: its names, and through them the part's. */
function within(from: Origin, names: Readonly<Record<string, string>>): Origin {
	const through = Object.entries(from.names).map(([inner, name]) => [inner, names[name] ?? name]);
	return { ...from, names: { ...names, ...Object.fromEntries(through) } };
}

function joinedLimit(limit: Limit, names: Readonly<Record<string, string>>): Limit {
	return {
		...limit,
		value: renamed(limit.value, names),
		bound: renamed(limit.bound, names),
		from: within(limit.from, names)
	};
}

/** Whether two steps work the same formula on the same values. */
function isSame(one: Origin, other: Origin): boolean {
	if (one.unit !== other.unit || one.key !== other.key) return false;
	const needs = Object.keys(unitOf(one.unit).steps[one.key]?.needs ?? {});
	return needs.every((key) => (one.names[key] ?? key) === (other.names[key] ?? key));
}
