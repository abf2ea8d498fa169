import type { TradeFunction } from '../../solver/trade-function.ts';
import { named } from '../shown.ts';
import type { Key } from './axis.ts';
import { cellAt, columnOf, rowOf } from './reading.ts';
import type { Cell, Table } from './table.ts';

/** What stands beside a cell, for the sentences about a misreading: `the radius for thinner sheet`. */
export interface LookUpWords {
	readonly above: string;
	readonly below: string;
	readonly twoAbove?: string;
	readonly twoBelow?: string;
	/** In the columns to the left and right; by their headings when left out. */
	readonly beside?: string;
}

/**
 * A look-up that formulas call. They may also call it misread, as `misread-as.ts` has it:
 * `finalDrillAbove`.
 */
export interface LookUp<A extends readonly Key[] = never[], V extends Cell = Cell> extends Omit<
	TradeFunction,
	'run'
> {
	/** What formulas call it; it is exported under this name. */
	readonly name: string;
	readonly table: Table;
	readonly words: LookUpWords;
	readonly run: (...keys: A) => V;
	/** Column of the table that it reads, when that is always the same one. */
	readonly column: number | null;
	/** The row key and the place of the column that its keys mean. */
	readonly find: (keys: readonly Key[]) => { readonly row: Key; readonly column: number };
}

interface Naming {
	readonly name: string;
	/** What stands before the bracket in displayed mathematics. */
	readonly shown: string;
	readonly words: LookUpWords;
}

function dimensionIn(table: Table, column: number): string {
	const holds = table.holds[column];
	if (!holds) throw new Error(`${table.id} does not say what column ${column + 1} holds`);
	return holds.kind.dimension.name;
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
	const { name, shown, words, otherwise } = parts;
	const column = columnOf(table, parts.column);
	return {
		name,
		table,
		words,
		column,
		takes: [table.rows.kind.dimension.name],
		gives: dimensionIn(table, column),
		show: named(shown),
		find: ([row = '']) => ({ row, column }),
		run: (key) => {
			const other = table.rows.placeOf(key) < 0 ? otherwise?.(key) : undefined;
			return other ?? cellAt(table, rowOf(table, key), column);
		}
	};
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
	const { name, shown, words, columnFirst = false } = parts;
	const takes = [table.rows, table.columns].map(({ kind }) => kind.dimension.name);
	const find = (keys: readonly Key[]) => {
		const [row, column] = columnFirst ? [keys[1], keys[0]] : keys;
		return { row: row as R, column: columnOf(table, column as C) };
	};
	return {
		name,
		table,
		words,
		column: null,
		takes: columnFirst ? takes.reverse() : takes,
		gives: dimensionIn(table, 0),
		show: named(shown),
		find,
		run: (...keys) => {
			const { row, column } = find(keys);
			return cellAt(table, rowOf(table, row), column);
		}
	};
}
