import type { Kind } from '../quantity/kinds/kind.ts';
import type { Given } from './given.ts';
import { compileFormula, ofRight } from './formula.ts';
import type { Limit, Method, Outcome, Slip, SlipNotes } from './method.ts';
import { slotsIn } from './outcome.ts';
import { alike, dimensionOf, sampleOf } from './sample.ts';
import { strainOf } from './strain.ts';
import { closed, type Functions, type Named, type Names, type Term } from './term.ts';
import type { Part } from './trade-function.ts';
import type { Piece } from './write.ts';

/*
 * Turns the formulas of a method or a piece into JavaScript source and displayed mathematics. This
 * runs when the app is built (see src/plugins/compile-methods.ts) and never on a page: what ships
 * are plain functions. A method also checks the pieces in it against its own values.
 */

/** JavaScript source of what is compiled from a method or a piece. */
export interface Compiled {
	/** To be handed to `addCompiled`. */
	readonly unit: string;
	/** What is only needed once something was answered: to be handed to `toldBy`. */
	readonly told: string;
}

export function compileMethod(method: Method, functions: Functions): Compiled {
	const names = namesOf(method.given);
	const before = new Map<string, Names>();
	const steps: Source[] = [];
	const needs = new Map<string, readonly string[]>();
	for (const [key, step] of Object.entries(method.steps)) {
		before.set(key, { ...names });
		const where = `${method.id}.${key}`;
		const term = compileFormula(step.formula, names, functions, where);
		const { text, named } = result(term, names, where, step.kind);
		needs.set(key, term.names);
		if (step.from.unit === method.id) {
			steps.push(source(key, term, strained(text, step, functions)));
		}
		names[key] = named;
	}
	const slips = Object.entries(method.slips).flatMap(([id, slip]) => {
		const { from, step } = slip;
		const at = `${method.id}.${step}, slip ${id}`;
		const source = slipSource(from.key, slip, before.get(step) ?? {}, names[step], functions, at);
		return from.unit === method.id ? [source] : [];
	});
	const limits = method.limits.map((limit, i) =>
		limitSource(limit, names, functions, `${method.id} limit ${i + 1}`)
	);
	const outcomes = method.outcomes.map((outcome, i) =>
		outcomeSource(outcome, names, functions, `${method.id} outcome ${i + 1}`)
	);
	const inverses = inverseSources(method, names, needs, functions);
	const slots = Object.keys(names).map((name) => `${name}: v.${name}`);
	return {
		unit: `{copy: (v) => ({${slots.join(', ')}}), ${texts(steps, slips)}, limits: [${limits.join(', ')}]}`,
		told: toldSource(steps, slips, outcomes, inverses)
	};
}

/** The same for a piece. */
export function compilePiece(piece: Piece, functions: Functions): Compiled {
	const where = `piece ${piece.piece}`;
	const needs = namesOf(piece.needs);
	const term = compileFormula(piece.step.formula, needs, functions, where);
	const { text, named } = result(term, needs, where, piece.step.kind);
	const steps = [source('step', term, strained(text, piece.step, functions))];
	const known = { ...needs, ...namesOf(piece.may) };
	const slips = Object.entries(piece.step.slips).map(([id, slip]) => {
		const at = `${where}, slip ${id}`;
		return slipSource(id, slip, known, named, functions, at);
	});
	return { unit: `{${texts(steps, slips)}, limits: []}`, told: toldSource(steps, slips, []) };
}

/** A formula by its key: what it computes, and what it looks like. */
interface Source {
	readonly text: string;
	readonly show: string;
}

function source(key: string, term: Term, text: string): Source {
	const name = JSON.stringify(key);
	return { text: `${name}: ${text}`, show: `${name}: ${JSON.stringify(tidy(term.show))}` };
}

function texts(steps: readonly Source[], slips: readonly Source[]): string {
	const [own, slipped] = [steps, slips].map((all) => all.map(({ text }) => text).join(', '));
	return `steps: {${own}}, slips: {${slipped}}`;
}

function toldSource(
	steps: readonly Source[],
	slips: readonly Source[],
	outcomes: readonly string[],
	inverses: readonly string[] = []
): string {
	const [own, slipped] = [steps, slips].map((all) => all.map(({ show }) => show).join(', '));
	return `{steps: {${own}}, slips: {${slipped}}, outcomes: [${outcomes.join(', ')}], inverses: {${inverses.join(', ')}}}`;
}

function namesOf(given: Readonly<Record<string, Given>>): Record<string, Named> {
	return Object.fromEntries(
		Object.entries(given).map(([key, { kind }]) => [
			key,
			{ sample: sampleOf(kind.dimension.name, kind.dimension), list: kind.isList }
		])
	);
}

/** A term with what it gives, which must suit the kind that is named for it. */
function result(
	term: Term,
	names: Names,
	where: string,
	kind: Kind | null = null
): { text: string; named: Named } {
	const list = term.each !== null;
	if (kind?.isList && !list) {
		throw new Error(`${where}: ${kind.noun} are wanted, and the formula gives one value`);
	}
	const name = dimensionOf(term.sample, where, kind?.dimension);
	const text = `{${worked(term, names)}, dimension: '${name}', ${along(term)}}`;
	return { text, named: { sample: term.sample, list } };
}

/** The source of a compiled step, with what makes it hard. */
function strained(text: string, { formula }: Pick<Slip, 'formula'>, functions: Functions): string {
	const strain = Object.keys(strainOf(formula, functions)).map((one) => `, ${one}: true`);
	return text.replace(/\}$/, `${strain.join('')}}`);
}

function slipSource(
	key: string,
	slip: Pick<Slip, 'formula' | keyof SlipNotes>,
	known: Names,
	step: Named | undefined,
	functions: Functions,
	at: string
): Source {
	const term = compileFormula(slip.formula, known, functions, at);
	// A value that is the same for every member of a list is repeated where the piece is worked.
	const fits = step && alike(term.sample, step.sample) && (term.each === null || step.list);
	if (!fits)
		throw new Error(
			`${at}: a slip must give the same kind of value as its step; check its units and what it adds up`
		);
	const rare = slip.rare ? ', rare: true' : '';
	const act = slip.act === undefined ? '' : `, act: ${JSON.stringify(slip.act)}`;
	const late = slip.late ? ', late: true' : '';
	return source(key, term, `{${worked(term, known)}, ${along(term)}${rare}${act}${late}}`);
}

function limitSource(limit: Limit, names: Names, functions: Functions, where: string): string {
	const value = compileFormula(limit.value, names, functions, where);
	const bound = compileFormula(limit.bound, names, functions, where);
	if (!alike(value.sample, bound.sample)) {
		throw new Error(`${where}: ${limit.value} and ${limit.bound} are of unlike kinds`);
	}
	const dimension = `dimension: '${dimensionOf(value.sample, where)}'`;
	const [seen, least] = [value, bound].map((term) => `{${worked(term, names)}, ${along(term)}}`);
	return `{${dimension}, value: ${seen}, bound: ${least}}`;
}

function outcomeSource(outcome: Outcome, names: Names, functions: Functions, at: string): string {
	const [first, ...others] = outcome.at.map((key) => {
		const step = names[key];
		if (!step) throw new Error(`${at}: no step ${key}`);
		return step;
	});
	if (!first) throw new Error(`${at}: name the steps it tells of`);
	if (others.some((one) => !alike(one.sample, first.sample) || one.list !== first.list)) {
		throw new Error(`${at}: its steps give unlike kinds of values`);
	}
	const own: Record<string, Named> = { ...names, entered: first };
	for (const [key, named] of Object.entries({ ...names, entered: first })) {
		own[`${ofRight}${key}`] = named;
	}
	const shows = Object.entries(outcome.shows).map(([key, { formula, kind }]) => {
		const where = `${at}, ${key}`;
		if (Object.hasOwn(own, key)) throw new Error(`${where}: the method has a value of that name`);
		const term = compileFormula(formula, own, functions, where);
		const { text, named } = result(term, own, where, kind);
		own[key] = named;
		return `${JSON.stringify(key)}: ${text}`;
	});
	const conditions = Object.values(outcome.cases).map(({ when }) => when);
	if (conditions.indexOf(null) !== conditions.length - 1) {
		throw new Error(
			`${at}: its last case, and no other, stands without a condition: otherwise('…')`
		);
	}
	const cases = Object.entries(outcome.cases).map(([id, { when, says }]) => {
		const where = `${at}, case ${id}`;
		const unknown = slotsIn(says).find((name) => !Object.hasOwn(own, name));
		if (unknown !== undefined) throw new Error(`${where}: no value is called ${unknown}`);
		if (when === null) return `${JSON.stringify(id)}: null`;
		const term = compileFormula(when, own, functions, where);
		if (term.sample !== true) throw new Error(`${where}: ${when}: a condition is wanted`);
		return `${JSON.stringify(id)}: {${worked(term, own)}}`;
	});
	return `{shows: {${shows.join(', ')}}, cases: {${cases.join(', ')}}}`;
}

/** What the inverses look like; their formulas are checked as those of steps and slips are. */
function inverseSources(
	method: Method,
	names: Names,
	needs: ReadonlyMap<string, readonly string[]>,
	functions: Functions
): string[] {
	return Object.entries(method.inverses).flatMap(([key, inverse]) => {
		const at = `${method.id}, inverse ${key}`;
		if (!Object.hasOwn(method.given, key)) throw new Error(`${at}: no given is called ${key}`);
		if ('by' in inverse) return [];
		const { from } = inverse;
		const wanted = names[key];
		if (!Object.hasOwn(method.steps, from)) throw new Error(`${at}: no step is called ${from}`);
		if (wanted?.list || names[from]?.list) throw new Error(`${at}: lists have no inverse`);
		const stray = Object.keys(inverse.slips).find((id) => !Object.hasOwn(method.slips, id));
		if (stray !== undefined) throw new Error(`${at}: the method has no slip called ${stray}`);
		const known = knownBackwards(key, from, names, needs);
		const shown = ([name, { formula }]: readonly [string, { readonly formula: string }]) => {
			const where = name === key ? at : `${at}, slip ${name}`;
			const term = compileFormula(formula, known, functions, where);
			if (!wanted || !alike(term.sample, wanted.sample)) {
				throw new Error(`${where}: ${formula} gives another kind of value than ${key}`);
			}
			return source(name, term, '').show;
		};
		const own = shown([key, inverse]).replace(/^[^:]*/, 'show');
		const slips = Object.entries(inverse.slips).map(shown);
		return [`${JSON.stringify(key)}: {${own}, slips: {${slips.join(', ')}}}`];
	});
}

/** What is known where `want` is asked for from a step: all that does not hang on it, and that step. */
function knownBackwards(
	want: string,
	from: string,
	names: Names,
	needs: ReadonlyMap<string, readonly string[]>
): Names {
	const reached = new Set([want]);
	for (const [key, used] of needs) if (used.some((name) => reached.has(name))) reached.add(key);
	return Object.fromEntries(
		Object.entries(names).filter(([key]) => key === from || !reached.has(key))
	);
}

function worked(term: Term, names: Names): string {
	const needs = term.names.map((name) => `${JSON.stringify(name)}: ${names[name]?.list ?? false}`);
	const run = closed(term);
	// Only outcomes read the right values too.
	const values = /\br\./.test(run) ? 'v, r' : 'v';
	return `run: (${values}) => ${run}, needs: {${needs.join(', ')}}`;
}

function along(term: Term): string {
	return `list: ${term.each !== null}`;
}

/** Neighbouring texts joined into one. */
function tidy(show: readonly Part[]): Part[] {
	const joined: Part[] = [];
	for (const part of show) {
		const last = joined.at(-1);
		if (typeof part === 'string' && typeof last === 'string') joined.splice(-1, 1, last + part);
		else joined.push(part);
	}
	return joined;
}
