import type { Kind } from '../quantity/kinds/kind.ts';
import type { Value } from '../quantity/value.ts';
import type { Given } from './given.ts';

/** How far an answer may be off and still be accepted, and the reason from the job. */
export interface Tolerance {
	/** Largest difference, in the base unit of the step, as an exact decimal or fraction. */
	readonly amount: string;
	readonly why: string;
	/** The tool whose reading it is, where a school may hold its work to another amount. */
	readonly tool?: 'rule' | 'micrometer';
	/** The same on a metric tool, where an answer is given in millimetres and this is wider. */
	readonly metric?: { readonly millimetres: string; readonly why: string };
}

/** How a result is named, written and marked. */
export interface StepNotes {
	readonly label: string;
	readonly symbol: string | null;
	/** The step as a question, in the trade's words; empty where its label says it. */
	readonly asks: string;
	/**
	 * What the result is; the plain kind of its dimension when left out. Where the step works along
	 * a list, it is the kind of one member.
	 */
	readonly kind: Kind | null;
	/** Id of the rule the step rests on, in `trade/rules.ts`; none for plain arithmetic. */
	readonly rule: string | null;
	/** How near an answer must be; a step without one is not asked by itself. */
	readonly tolerance: Tolerance | null;
}

/**
 * Where the compiled form of a formula stands: the file that wrote it (a method, or a piece as
 * `piece/grip`), its key there, and the names that are other ones in this method.
 */
export interface Origin {
	readonly unit: string;
	readonly key: string;
	/** Name in the formula as written → name in this method; names left out are the same. */
	readonly names: Readonly<Record<string, string>>;
}

/** One step of a computation: a formula on the givens and the steps before it. */
export interface Step extends StepNotes {
	/** The formula in the names of this method. */
	readonly formula: string;
	/** What is learned and remembered of it: the piece, or the step of this method. */
	readonly skill: string;
	readonly from: Origin;
}

/** What is known of a slip beside its formula and its sentence. */
export interface SlipNotes {
	/** Whether it is seldom made: another slip that explains an answer as well is believed first. */
	readonly rare: boolean;
	/** The act that it is, where the same is done in other steps: slips of one act are one mistake. */
	readonly act?: string | undefined;
	/**
	 * Whether it was added when tasks of its step had been given out: no draw hangs on it, so that
	 * their numbers keep their tasks. A family that raises its `rev` may let it count.
	 */
	readonly late?: boolean | undefined;
}

/** A mistake people make in one step: the formula they work instead, and what is wrong with it. */
export interface Slip extends SlipNotes {
	readonly step: string;
	readonly formula: string;
	readonly says: string;
	/** Its id within its step's skill, as it stands in learners' records. */
	readonly id: string;
	readonly from: Origin;
}

/** A value and what it must keep to: at least the bound, or at most. */
export interface Limit {
	/** What is looked at, in words: `Edge distance`. */
	readonly what: string;
	readonly value: string;
	readonly bound: string;
	readonly least: boolean;
	/** The sentence where it does not hold. */
	readonly says: string;
	readonly rule: string | null;
	readonly from: Origin;
}

/** A sentence that tells what a number does to the metal, and when it is the one. */
export interface Case {
	/** A condition on the values; the last case has none. */
	readonly when: string | null;
	/** With `{name}` where a value stands: `{length} stands out {out}.` */
	readonly says: string;
}

/** What an answer does to the metal: values that show it, and the sentence that fits. */
export interface Outcome {
	/** Keys of the steps whose answers it tells of. */
	readonly at: readonly string[];
	readonly shows: Readonly<Record<string, Shown>>;
	readonly cases: Readonly<Record<string, Case>>;
	readonly from: Origin;
}

/** A value that only shows what an answer does; nobody is asked for it. */
export interface Shown {
	readonly formula: string;
	/** As for a step. */
	readonly kind: Kind | null;
}

/**
 * How a given is found when it is asked for instead: in closed form by another method, or as the
 * value at which a step comes to a known result.
 */
export type Inverse =
	| { readonly by: Method }
	| {
			/** The step whose result is then a given. */
			readonly from: string;
			/** Between which values of the given it is looked for, in base units. */
			readonly between: readonly [least: number, most: number];
			/** How the trade works it this way round: shown as its working, in place of the step. */
			readonly formula: string;
			readonly label: string;
			readonly rule: string | null;
			readonly tolerance: Tolerance;
			/**
			 * The slips of the method that are made this way round too, by id, each with its formula
			 * and sentence here: turned round, a setback that was to be taken off is to be added. A slip
			 * of a step that hangs on the given and is left out here is not made.
			 */
			readonly slips: Readonly<Record<string, InverseSlip>>;
	  };

/** A slip made the other way round, as it is shown and told. */
export type InverseSlip = Pick<Slip, 'formula' | 'says'>;

/**
 * One piece of trade computation, written once: named givens, steps in order, and the slips
 * people make in each step. The answer, the worked solution, the diagnosis, the marking of
 * single steps and the lab check are all read from it.
 */
export interface Method<
	G extends Record<string, Given> = Record<string, Given>,
	K extends string = string
> {
	readonly id: string;
	readonly title: string;
	readonly given: G;
	readonly steps: Readonly<Record<K, Step>>;
	readonly slips: Readonly<Record<string, Slip>>;
	readonly limits: readonly Limit[];
	readonly outcomes: readonly Outcome[];
	readonly inverses: Readonly<Record<string, Inverse>>;
}

/** The type of a given's value; of a method whose givens are not known, any value. */
export type ValueOf<X extends Given> = X['kind'] extends Kind<infer V> ? V : Value;

/** The values of a method's givens, by key, in base units. */
export type GivenValues<M extends Method> = {
	readonly [K in keyof M['given']]: ValueOf<M['given'][K]>;
};
