import type { Kind } from '../../quantity/kind.ts';
import type { Part, TradeFunction } from '../../solver/trade-function.ts';
import { named, text } from '../shown.ts';
import type { Key } from './axis.ts';
import { between, cellAt, columnOf, rowOf } from './reading.ts';
import type { Cell, Table } from './table.ts';

/** Where the eye lands beside the wanted cell. */
export type Misreading = 'above' | 'below' | 'twoAbove' | 'twoBelow' | 'left' | 'right' | 'between';

/** What stands there, for the sentences about it: `the radius for thinner sheet`. */
export interface LookUpWords {
	readonly above: string;
	readonly below: string;
	readonly twoAbove?: string;
	readonly twoBelow?: string;
	/** In the columns to the left and right; by their headings when left out. */
	readonly beside?: string;
}

/** A look-up that formulas call, and the same with the eye slipped. */
export interface LookUp<A extends readonly Key[] = never[], V extends Cell = Cell> extends Omit<
	TradeFunction,
	'run'
> {
	/** What formulas call it; it is exported under this name. */
	readonly name: string;
	readonly table: Table;
	readonly words: LookUpWords;
	readonly run: (...keys: A) => V;
	/**
	 * Each is called by the look-up's name and its own: `finalDrillAbove`. A table of one row has no
	 * row above, one of one column none to the left; only steps can be taken for a slope.
	 */
	readonly misreadings: Readonly<Partial<Record<Misreading, TradeFunction>>>;
	/** Column of the table that it reads, when that is always the same one. */
	readonly column: number | null;
}

interface Naming {
	readonly name: string;
	/** What stands before the bracket in displayed mathematics. */
	readonly shown: string;
	readonly words: LookUpWords;
}

/** Looks up the row of a key in one column. */
export function lookUp<R extends Key, C extends Key, V extends Cell>(
	table: Table<R, C, V>,
	parts: Naming & {
		readonly column: C;
		/** What a key without a row gives; undefined when it is refused. */
		readonly otherwise?: (key: R) => V | undefined;
	}
): LookUp<[R], V> {
	const column = columnOf(table, parts.column);
	const { otherwise = () => undefined } = parts;
	const find = ([row]: readonly Key[]) => ({ row: row as R, column });
	const run = (key: R) => {
		const other = table.rows.placeOf(key) < 0 ? otherwise(key) : undefined;
		return other ?? cellAt(table, rowOf(table, key), column);
	};
	return made(table, parts, { takes: [table.rows.kind], column, find, run });
}

/** Looks up where a row and a column cross; `columnFirst` when the formula names that one first. */
export function lookUpCrossing<R extends Key, C extends Key, V extends Cell>(
	table: Table<R, C, V>,
	parts: Naming & { readonly columnFirst: true }
): LookUp<[C, R], V>;
export function lookUpCrossing<R extends Key, C extends Key, V extends Cell>(
	table: Table<R, C, V>,
	parts: Naming
): LookUp<[R, C], V>;
export function lookUpCrossing<R extends Key, C extends Key, V extends Cell>(
	table: Table<R, C, V>,
	parts: Naming & { readonly columnFirst?: boolean }
): LookUp<[R, C] | [C, R], V> {
	const kinds = [table.rows.kind, table.columns.kind];
	const find = (keys: readonly Key[]) => {
		const [row, column] = parts.columnFirst ? [keys[1], keys[0]] : keys;
		return { row: row as R, column: columnOf(table, column as C) };
	};
	const run = (...keys: [R, C] | [C, R]) => {
		const { row, column } = find(keys);
		return cellAt(table, rowOf(table, row), column);
	};
	const takes = parts.columnFirst ? kinds.reverse() : kinds;
	return made(table, parts, { takes, column: null, find, run });
}

interface Finding<R, A extends readonly Key[], V> {
	readonly takes: readonly Kind[];
	readonly column: number | null;
	readonly find: (keys: readonly Key[]) => { row: R; column: number };
	readonly run: (...keys: A) => V;
}

function made<R extends Key, C extends Key, V extends Cell, A extends readonly Key[]>(
	table: Table<R, C, V>,
	{ name, shown, words }: Naming,
	{ takes, column, find, run }: Finding<R, A, V>
): LookUp<A, V> {
	const gives = table.holds[column ?? 0]?.kind ?? 'number';
	const show = named(shown);
	const beside = (place: string, read: (row: R, at: number) => Cell): TradeFunction => ({
		takes,
		gives,
		run: (...keys: Key[]) => {
			const found = find(keys);
			return read(found.row, found.column);
		},
		show: (values): Part[] => [text(`${place} `), ...show(values)]
	});
	const moved = (down: number, right: number) => (row: R, at: number) =>
		cellAt(table, rowOf(table, row) + down, at + right);
	const sideways = (right: number) =>
		column === null ? table.columns.keys.length > 1 : table.holds[column + right]?.kind === gives;
	const several = table.rows.keys.length > 1;
	const slope = several && table.stepped !== null && gives !== 'text';
	const misreadings = {
		...(several && {
			above: beside('one row above', moved(-1, 0)),
			below: beside('one row below', moved(1, 0)),
			twoAbove: beside('two rows above', moved(-2, 0)),
			twoBelow: beside('two rows below', moved(2, 0))
		}),
		...(sideways(-1) && { left: beside('one column left of', moved(0, -1)) }),
		...(sideways(1) && { right: beside('one column right of', moved(0, 1)) }),
		...(slope && {
			between: beside('between the rows around', (row, at) => between(table, row, at))
		})
	};
	return { name, table, words, takes, gives, run, show, misreadings, column };
}
