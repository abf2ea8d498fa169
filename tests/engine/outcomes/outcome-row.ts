import type { Value } from '../../../src/lib/engine/quantity/value.ts';

/** What an answer does to the metal, worked by hand from the source, in inches. */
export interface OutcomeRow {
	/** The givens of the task, in base units. */
	readonly given: Readonly<Record<string, Value>>;
	/** The step that was answered, and the answer, in base units. */
	readonly key: string;
	readonly entered: Value;
	/** Id of the case that holds, and its whole sentence. */
	readonly case: string;
	readonly says: string;
}
