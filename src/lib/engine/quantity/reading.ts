import type { Exact } from './exact.ts';
import type { Kind, LengthUnit, Style } from './kind.ts';

/** What a field asks for. */
export interface Expected {
	readonly kind: Kind;
	/** Several values in one field. */
	readonly list?: boolean;
	readonly style?: Style;
	/** A size in figures is wanted: the name of a drill would beg the question. */
	readonly inFigures?: boolean;
	/** Unit of a number written without one, and the one lengths are shown in; inches if absent. */
	readonly unit?: LengthUnit;
}

/** How an entry was understood. Values are in the base unit of their kind. */
export type Reading =
	| { readonly state: 'empty' }
	| {
			readonly state: 'read';
			readonly value: Exact | string | Exact[];
			/** The entry as understood, to show under the field. */
			readonly said: string;
			/** What was taken for granted. */
			readonly note?: string;
			/**
			 * Half of the last place written, in base units: 0.005 for `0.35 in`; 0 for fractions,
			 * counts, dash numbers, drill names and arithmetic. For a list, the largest.
			 */
			readonly grain: number;
	  }
	| { readonly state: 'which'; readonly question: string; readonly options: readonly Option[] }
	| { readonly state: 'arithmetic'; readonly text: string }
	| { readonly state: 'unread'; readonly why: string };

/** How one number or size was understood. */
export type OneReading =
	Exclude<Reading, { state: 'empty' | 'read' }> | ({ readonly state: 'read' } & Option);

/** One of the ways an entry can be understood. */
export interface Option {
	readonly value: Exact;
	readonly said: string;
	readonly grain: number;
	readonly note?: string;
}

/** Every way to understand an entry: none, one or more; or the sentence that refuses it. */
export type Found = readonly Option[] | string;
