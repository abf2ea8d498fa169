import {
	alike,
	closed,
	compileFormula,
	type Functions,
	kindOf,
	type Named,
	type Names,
	type Piece,
	sampleOf
} from './formula.ts';
import type { Method } from './method.ts';
import type { Part } from './trade-function.ts';

export type { Functions };

/*
 * Turns the formulas of a method into JavaScript source and displayed mathematics. This runs
 * when the app is built (see src/plugins/compile-methods.ts) and never on a page: what ships are
 * plain functions.
 */

/** JavaScript source of a compiled method, to be handed to `addCompiled`. */
export function compileMethod(method: Method, functions: Functions): string {
	const names: Record<string, Named> = {};
	for (const [key, given] of Object.entries(method.given)) {
		names[key] = { sample: sampleOf(given.kind), list: given.list };
	}
	const before = new Map<string, Names>();
	const steps: string[] = [];
	const results = new Map<string, Named>();
	for (const [key, step] of Object.entries(method.steps)) {
		before.set(key, { ...names });
		const where = `${method.id}.${key}`;
		const piece = compileFormula(step.formula, names, functions, where);
		const kind = kindOf(piece.sample, where);
		const list = piece.each !== null;
		steps.push(`${JSON.stringify(key)}: {${source(piece)}, kind: '${kind}', list: ${list}}`);
		const named = { sample: piece.sample, list };
		names[key] = named;
		results.set(key, named);
	}
	const slips = Object.entries(method.slips).map(([id, slip]) => {
		const at = `${method.id}.${id}`;
		const result = results.get(slip.step);
		const known = before.get(slip.step);
		if (!result || !known) throw new Error(`${at}: no step ${slip.step}`);
		const piece = compileFormula(slip.formula, known, functions, at);
		if (!alike(piece.sample, result.sample) || (piece.each !== null) !== result.list) {
			throw new Error(`${at}: a slip must give the same kind of value as its step`);
		}
		return `${JSON.stringify(id)}: {${source(piece)}}`;
	});
	const limits = method.limits.map(
		(limit, i) =>
			`{${source(compileFormula(limit.formula, names, functions, `${method.id} limit ${i + 1}`))}}`
	);
	const slots = Object.keys(names).map((name) => `${name}: v.${name}`);
	return `{copy: (v) => ({${slots.join(', ')}}), steps: {${steps.join(', ')}}, slips: {${slips.join(', ')}}, limits: [${limits.join(', ')}]}`;
}

function source(piece: Piece): string {
	return `run: (v) => ${closed(piece)}, show: ${JSON.stringify(tidy(piece.show))}`;
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
