import type { Kind, Style, Value } from '../quantity/kind.ts';

/** A value a method starts from. Numbers are in the base unit of their kind. */
export interface Given<K extends Kind = Kind, L extends boolean = boolean> {
	readonly kind: K;
	readonly list: L;
	readonly label: string;
	/** How it stands in a formula; a given without one is shown by its key. */
	readonly symbol: string | null;
	readonly style: Style;
	/** The words a `text` given may take; empty when any word is looked up in a table. */
	readonly oneOf: readonly string[];
	/** Whether zero makes sense: a kerf may be nothing, a thickness may not. */
	readonly zero: boolean;
}

/** How far an answer may be off and still be accepted, and the reason from the job. */
export interface Tolerance {
	/** Largest difference, in the base unit of the step, as an exact decimal or fraction. */
	readonly amount: string;
	readonly why: string;
}

/** One step of a computation: a formula on the givens and the steps before it. */
export interface Step {
	readonly formula: string;
	readonly label: string;
	readonly symbol: string | null;
	/** How the shop writes the result; chosen by the kind of the result when left out. */
	readonly style: Style | null;
	/** Id of the rule the step rests on, in `trade/rules.ts`; none for plain arithmetic. */
	readonly rule: string | null;
	/** How near an answer must be; a step without one is not asked by itself. */
	readonly tolerance: Tolerance | null;
	/** The words a result may take, when it is a choice. */
	readonly oneOf: readonly string[];
	/** Whether the size must be given in figures, because its name is a given. */
	readonly inFigures: boolean;
}

/** A mistake people make in one step: the formula they work instead, and what is wrong with it. */
export interface Slip<S extends string = string> {
	readonly step: S;
	readonly formula: string;
	readonly says: string;
}

/** Something that must not come out below zero for the job to be possible at all. */
export interface Limit {
	readonly formula: string;
	readonly says: string;
}

/**
 * One piece of trade computation, written once: named givens, steps in order, and the slips
 * people make in each step. The answer, the worked solution, the diagnosis, the marking of
 * single steps and the lab check are all read from it.
 */
export interface Method<
	G extends Record<string, Given> = Record<string, Given>,
	S extends Record<string, Step> = Record<string, Step>,
	L extends string = string
> {
	readonly id: string;
	readonly title: string;
	readonly given: G;
	readonly steps: S;
	readonly slips: Readonly<Record<L, Slip<keyof S & string>>>;
	readonly limits: readonly Limit[];
}

/** The type of a given's value; of a method whose givens are not known, any value. */
export type ValueOf<X extends Given> = Kind extends X['kind']
	? Value
	: X['kind'] extends 'text'
		? string
		: X['list'] extends true
			? readonly number[]
			: number;

/** The values of a method's givens, by key, in base units. */
export type GivenValues<M extends Method> = {
	readonly [K in keyof M['given']]: ValueOf<M['given'][K]>;
};

/** A method with its compiled formulas left out: plain data that a build step compiles. */
export function method<
	const G extends Record<string, Given>,
	const S extends Record<string, Step>,
	const L extends string
>(parts: {
	id: string;
	title: string;
	given: G;
	steps: S;
	slips: Readonly<Record<L, Slip<keyof S & string>>>;
	limits?: readonly Limit[];
}): Method<G, S, L> {
	return { limits: [], ...parts };
}

interface StepNotes {
	symbol?: string;
	style?: Style;
	rule?: string;
	tolerance?: Tolerance;
	oneOf?: readonly string[];
	inFigures?: boolean;
}

export function step(formula: string, label: string, notes: StepNotes = {}): Step {
	const { symbol = null, style = null, rule = null, tolerance = null } = notes;
	const { oneOf = [], inFigures = false } = notes;
	return { formula, label, symbol, style, rule, tolerance, oneOf, inFigures };
}

export function slip<const S extends string>(atStep: S, formula: string, says: string): Slip<S> {
	return { step: atStep, formula, says };
}

export function limit(formula: string, says: string): Limit {
	return { formula, says };
}

interface GivenNotes {
	symbol?: string;
	style?: Style;
	zero?: boolean;
}

const styleOf: Readonly<Record<Kind, Style>> = {
	length: 'thousandth',
	angle: 'degrees',
	weight: 'pounds',
	density: 'factor',
	number: 'factor',
	text: 'words'
};

/** The style a value of this kind is written in when nothing else is said. */
export function plainStyle(kind: Kind): Style {
	return styleOf[kind];
}

function given<K extends Kind, L extends boolean>(
	kind: K,
	list: L,
	label: string,
	notes: GivenNotes = {},
	oneOf: readonly string[] = []
): Given<K, L> {
	const { symbol = null, style = plainStyle(kind), zero = false } = notes;
	return { kind, list, label, symbol, style, oneOf, zero };
}

export const length = (label: string, notes?: GivenNotes) => given('length', false, label, notes);
export const lengths = (label: string, notes?: GivenNotes) => given('length', true, label, notes);
export const angle = (label: string, notes?: GivenNotes) => given('angle', false, label, notes);
export const angles = (label: string, notes?: GivenNotes) => given('angle', true, label, notes);
export const count = (label: string, notes?: GivenNotes) =>
	given('number', false, label, { style: 'count', ...notes });
export const words = (label: string, notes?: GivenNotes) => given('text', false, label, notes);
export const choice = (label: string, oneOf: readonly string[], notes?: GivenNotes) =>
	given('text', false, label, notes, oneOf);
