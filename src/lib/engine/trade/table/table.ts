import type { Kind } from '../../quantity/kinds/kind.ts';
import type { Source } from '../source.ts';
import { type Axis, byName, type Key } from './axis.ts';

/** What a cell holds: a number in base units, or a word. */
export type Cell = number | string;

/** What the cells of a column hold, and how the table prints them. */
export interface Holding<V extends Cell = Cell> {
	readonly kind: Kind;
	readonly unit: string;
	write(value: V): string;
}

/** A cell that does not fit its neighbours. It is shown, with the reason, and never read. */
export interface Suspect<R extends Key = Key, C extends Key = Key> {
	readonly row: R;
	readonly column: C;
	/** Half a sentence: `the cells beside it and the formula give 0.3455`. */
	readonly why: string;
}

/**
 * A published table, declared once. Formulas look it up (`look-up.ts`), a task may show an excerpt
 * of it (`excerpt.ts`), and the Rules page lists it.
 */
export interface Table<R extends Key = Key, C extends Key = Key, V extends Cell = Cell> {
	readonly id: string;
	readonly title: string;
	/** Id of the topic that it is listed under. */
	readonly topic: string;
	/** How a sentence calls it: `the chart`. */
	readonly called: string;
	readonly source: Source;
	/** Sources of single rows that stand elsewhere, by key. */
	readonly rowSources: ReadonlyMap<R, Source>;
	readonly rows: Axis<R>;
	readonly columns: Axis<C>;
	/** Row by row; null where nothing is printed. */
	readonly cells: readonly (readonly (V | null)[])[];
	/** One for each column. */
	readonly holds: readonly Holding<V>[];
	readonly suspect: readonly Suspect<R, C>[];
	/** Whether it goes by steps, so that there is nothing to be worked out between two rows. */
	readonly stepped: boolean;
}

type Parts<R extends Key, C extends Key, V extends Cell> = Pick<
	Table<R, C, V>,
	'id' | 'title' | 'topic' | 'source' | 'rows' | 'columns' | 'cells'
> & {
	readonly called?: string;
	/** One for all columns, or one for each. */
	readonly holds: Holding<V> | readonly Holding<V>[];
	readonly suspect?: readonly Suspect<NoInfer<R>, NoInfer<C>>[];
	readonly stepped?: boolean;
	readonly rowSources?: ReadonlyMap<NoInfer<R>, Source>;
};

export function table<R extends Key, C extends Key, V extends Cell>(
	parts: Parts<R, C, V>
): Table<R, C, V> {
	const { columns, holds } = parts;
	return {
		called: 'the chart',
		suspect: [],
		stepped: false,
		rowSources: new Map(),
		...parts,
		holds: 'kind' in holds ? columns.keys.map(() => holds) : holds
	};
}

export function holding<V extends Cell>(
	kind: Kind,
	write: (value: V) => string,
	unit = ''
): Holding<V> {
	return { kind, unit, write };
}

/** A column with a name and a kind of its own. */
export interface Measure<V extends Cell = Cell> extends Holding<V> {
	readonly label: string;
}

export function measure<V extends Cell>(label: string, holds: Holding<V>): Measure<V> {
	return { label, ...holds };
}

/** Columns that are not looked up but named: `pilot` and `final` of a rivet drill. */
export function measures<C extends string, V extends Cell>(
	named: Readonly<Record<C, Measure<V>>>
): { columns: Axis<C>; holds: readonly Measure<V>[] } {
	const names = Object.keys(named) as C[];
	return {
		columns: byName(
			'',
			names.map((name) => [name]),
			{ write: (name) => named[name].label }
		),
		holds: names.map((name) => named[name])
	};
}
