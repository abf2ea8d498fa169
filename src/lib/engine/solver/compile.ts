import type { Kind } from '../quantity/kinds/kind.ts';
import type { Given } from './given.ts';
import { compileFormula, ofRight } from './formula.ts';
import type { Limit, Method, Outcome, Slip } from './method.ts';
import { slotsIn } from './outcome.ts';
import { alike, dimensionOf, sampleOf } from './sample.ts';
import { closed, type Functions, type Named, type Names, type Term } from './term.ts';
import type { Part } from './trade-function.ts';
import type { Piece } from './write.ts';

/*
 * Turns the formulas of a method or a piece into JavaScript source and displayed mathematics. This
 * runs when the app is built (see src/plugins/compile-methods.ts) and never on a page: what ships
 * are plain functions. A method also checks the pieces in it against its own values.
 */

/** JavaScript source of a compiled method, to be handed to `addCompiled`. */
export function compileMethod(method: Method, functions: Functions): string {
	const names = namesOf(method.given);
	const before = new Map<string, Names>();
	const steps: string[] = [];
	for (const [key, step] of Object.entries(method.steps)) {
		before.set(key, { ...names });
		const where = `${method.id}.${key}`;
		const term = compileFormula(step.formula, names, functions, where);
		const { text, named } = result(term, names, where, step.kind);
		if (step.from.unit === method.id) steps.push(`${JSON.stringify(key)}: ${text}`);
		names[key] = named;
	}
	const slips = Object.entries(method.slips).flatMap(([id, slip]) => {
		const at = `${method.id}.${id}`;
		const text = slipSource(slip, before.get(slip.step) ?? {}, names[slip.step], functions, at);
		return slip.from.unit === method.id ? [`${JSON.stringify(slip.from.key)}: ${text}`] : [];
	});
	const limits = method.limits.map((limit, i) =>
		limitSource(limit, names, functions, `${method.id} limit ${i + 1}`)
	);
	const outcomes = method.outcomes.map((outcome, i) =>
		outcomeSource(outcome, names, functions, `${method.id} outcome ${i + 1}`)
	);
	checkInverses(method, names);
	const slots = Object.keys(names).map((name) => `${name}: v.${name}`);
	return `{copy: (v) => ({${slots.join(', ')}}), steps: {${steps.join(', ')}}, slips: {${slips.join(', ')}}, limits: [${limits.join(', ')}], outcomes: [${outcomes.join(', ')}]}`;
}

/** The same for a piece. */
export function compilePiece(piece: Piece, functions: Functions): string {
	const where = `piece ${piece.piece}`;
	const needs = namesOf(piece.needs);
	const term = compileFormula(piece.step.formula, needs, functions, where);
	const { text, named } = result(term, needs, where, piece.step.kind);
	const known = { ...needs, ...namesOf(piece.may) };
	const slips = Object.entries(piece.step.slips).map(([id, slip]) => {
		const at = `${where}, slip ${id}`;
		return `${JSON.stringify(id)}: ${slipSource(slip, known, named, functions, at)}`;
	});
	return `{steps: {step: ${text}}, slips: {${slips.join(', ')}}, limits: [], outcomes: []}`;
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
	const text = `{${source(term, names)}, dimension: '${name}', ${along(term)}}`;
	return { text, named: { sample: term.sample, list } };
}

function slipSource(
	slip: Pick<Slip, 'formula'>,
	known: Names,
	step: Named | undefined,
	functions: Functions,
	at: string
): string {
	const term = compileFormula(slip.formula, known, functions, at);
	// A value that is the same for every member of a list is repeated where the piece is worked.
	const fits = step && alike(term.sample, step.sample) && (term.each === null || step.list);
	if (!fits) throw new Error(`${at}: a slip must give the same kind of value as its step`);
	return `{${source(term, known)}, ${along(term)}}`;
}

function limitSource(limit: Limit, names: Names, functions: Functions, where: string): string {
	const value = compileFormula(limit.value, names, functions, where);
	const bound = compileFormula(limit.bound, names, functions, where);
	if (!alike(value.sample, bound.sample)) {
		throw new Error(`${where}: ${limit.value} and ${limit.bound} are of unlike kinds`);
	}
	const dimension = `dimension: '${dimensionOf(value.sample, where)}'`;
	const [seen, least] = [value, bound].map((term) => `{${source(term, names)}, ${along(term)}}`);
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
	const cases = Object.entries(outcome.cases).map(([id, { when, says }]) => {
		const where = `${at}, case ${id}`;
		const unknown = slotsIn(says).find((name) => !Object.hasOwn(own, name));
		if (unknown !== undefined) throw new Error(`${where}: no value is called ${unknown}`);
		if (when === null) return `${JSON.stringify(id)}: null`;
		const term = compileFormula(when, own, functions, where);
		if (term.sample !== true) throw new Error(`${where}: ${when}: a condition is wanted`);
		return `${JSON.stringify(id)}: {${source(term, own)}}`;
	});
	return `{shows: {${shows.join(', ')}}, cases: {${cases.join(', ')}}}`;
}

function checkInverses(method: Method, names: Names): void {
	for (const [key, inverse] of Object.entries(method.inverses)) {
		const at = `${method.id}, inverse ${key}`;
		if (!Object.hasOwn(method.given, key)) throw new Error(`${at}: no given is called ${key}`);
		if ('by' in inverse) continue;
		const { from } = inverse;
		if (!Object.hasOwn(method.steps, from)) throw new Error(`${at}: no step is called ${from}`);
		if (method.given[key]?.kind.isList || names[from]?.list)
			throw new Error(`${at}: lists have no inverse`);
		const stray = Object.keys(inverse.slips).find((id) => !Object.hasOwn(method.slips, id));
		if (stray !== undefined) throw new Error(`${at}: the method has no slip called ${stray}`);
	}
}

function source(term: Term, names: Names): string {
	const needs = term.names.map((name) => `${JSON.stringify(name)}: ${names[name]?.list ?? false}`);
	const run = `run: (v, r) => ${closed(term)}`;
	return `${run}, show: ${JSON.stringify(tidy(term.show))}, needs: {${needs.join(', ')}}`;
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
