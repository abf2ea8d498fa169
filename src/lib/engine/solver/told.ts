import type { CompiledStep, Formula } from './compiled.ts';
import type { Case, Shown } from './method.ts';
import type { Part } from './trade-function.ts';

/*
 * What a method or a piece tells once something was answered: its sentences, what its formulas look
 * like, and what an answer does to the metal. It stands in the method's file beside the formulas.
 * The build of the pages takes it out of there into a file that is fetched later (families/tell.ts);
 * everywhere else it is there from the start.
 */

/** What is told of a slip. */
export interface ToldSlip {
	readonly formula: string;
	readonly says: string;
	/** What its formula looks like. */
	readonly show: readonly Part[];
}

export interface CompiledOutcome {
	readonly shows: Readonly<Record<string, CompiledStep>>;
	readonly cases: Readonly<Record<string, Formula | null>>;
}

/** An outcome as it is written, and its compiled formulas. */
export interface ToldOutcome {
	readonly shows: Readonly<Record<string, Shown>>;
	readonly cases: Readonly<Record<string, Case>>;
	readonly compiled: CompiledOutcome;
}

export interface Told {
	/** Its steps as questions, those that have one. */
	readonly asks: Readonly<Record<string, string>>;
	/** What the formula of a step looks like. */
	readonly steps: Readonly<Record<string, readonly Part[]>>;
	readonly slips: Readonly<Record<string, ToldSlip>>;
	readonly outcomes: readonly ToldOutcome[];
	/** What is told the other way round, by the given that is asked for. */
	readonly inverses: Readonly<Record<string, ToldInverse>>;
}

export interface ToldInverse {
	/** What its formula looks like. */
	readonly show: readonly Part[];
	readonly slips: Readonly<Record<string, ToldSlip>>;
}

const told = new Map<string, Told>();

/** Called by the code that the build adds to every file of `methods/`. */
export function addTold(unit: string, all: Told): void {
	told.set(unit, all);
}

export function isTold(unit: string): boolean {
	return told.has(unit);
}

/** @throws Error when that has not been fetched: nothing is shown half. */
export function toldOf(unit: string): Told {
	const all = told.get(unit);
	if (!all) throw new Error(`${unit}: what it tells has not been loaded; await tell() before`);
	return all;
}
