import type { Exact } from './exact.ts';
import type { LengthUnit, Plan } from './value.ts';
import type { Numeral } from './numeral.ts';
import type { Dimension } from './units.ts';

/** What the reader of numbers must know of a kind. */
export interface Measure {
	readonly dimension: Dimension;
	/** `a rivet length`: what is wanted. */
	readonly noun: string;
	/** How it may be written: `−5 or 5/16 in`. */
	readonly example: (unit: LengthUnit) => string;
	/** Numbers so large that a comma before three digits can only part thousands. */
	readonly thousands: boolean;
	/** Only whole numbers. */
	readonly whole: boolean;
	/** Whether it is written as a fraction where it is one of 64ths. */
	readonly fractions: boolean;
}

/** How sizes are read that go by a name: dash numbers and drills. */
export interface NameReading {
	/**
	 * The entry without a word that only says what it is, and what to read it as; a sentence when
	 * it is something else.
	 */
	readonly withoutNoun: (entry: string, field: Field) => Entry | string;
	/** The sizes that an entry names. */
	readonly named: (entry: string, field: Field) => Found;
	/** What a bare number may be the name of; `only` when it cannot be a size in inches as well. */
	readonly bare: (number: Numeral, field: Field) => { found: Found; only: boolean };
	/** Behind the read-back of a size: `, a −5 length`, or nothing. */
	readonly said: (size: Exact, fraction: boolean) => string;
}

/** Plain text, and the field it is read for. */
export interface Entry {
	readonly entry: string;
	readonly field: Field;
}

/** What a field asks for. */
export interface Field {
	readonly kind: Measure;
	readonly names: NameReading | null;
	/** Unit of a length written without one, and the one lengths are shown in. */
	readonly unit: LengthUnit;
}

/** What answers are read as: exact numbers in base units, words, or lists. */
export type ReadValue = Exact | string | readonly (Exact | string)[] | Plan;

/** How an entry was understood. Values are in the base unit of their kind. */
export type Reading<R = ReadValue> =
	| { readonly state: 'empty' }
	| {
			readonly state: 'read';
			readonly value: R;
			/** The entry as understood, to show under the field. */
			readonly said: string;
			/** What was taken for granted. */
			readonly note?: string;
			/**
			 * Half of the last place written, in base units: 0.005 for `0.35 in`; 0 for fractions,
			 * counts, dash numbers, drill names and arithmetic. For a list, the largest.
			 */
			readonly grain: number;
			/** The letter of the size that the value multiplies: `D` for `2D`. */
			readonly times?: string;
	  }
	| { readonly state: 'which'; readonly question: string; readonly options: readonly Option[] }
	| { readonly state: 'arithmetic'; readonly text: string }
	| { readonly state: 'unread'; readonly why: string };

/** How one number or size was understood. */
export type OneReading =
	| Exclude<Reading<Exact>, { state: 'empty' | 'read' }>
	| ({ readonly state: 'read' } & Option);

/** One of the ways an entry can be understood. */
export interface Option {
	readonly value: Exact;
	readonly said: string;
	readonly grain: number;
	readonly note?: string;
	readonly times?: string;
}

/** Every way to understand an entry: none, one or more; or the sentence that refuses it. */
export type Found = readonly Option[] | string;
