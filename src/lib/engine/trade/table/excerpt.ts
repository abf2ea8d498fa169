import type { Key } from './axis.ts';
import { columnOf, rowOf } from './reading.ts';
import type { Table } from './table.ts';

/** What an excerpt is cut around. */
export interface Wanted {
	readonly row: Key;
	/** The column, where a table is too wide to show all of them. */
	readonly column?: Key;
}

/** Most rows and columns of an excerpt. */
export interface ExcerptSize {
	readonly rows?: number;
	readonly columns?: number;
}

/** Places, from 0, of a few neighbouring rows and columns of a table. */
export interface Excerpt {
	readonly rows: readonly number[];
	readonly columns: readonly number[];
}

/**
 * The rows and columns around the wanted ones. Where it begins gives nothing away: the wanted one
 * stands at another place from one row to the next, with neighbours on both sides where there are
 * any.
 *
 * @throws TradeError when the table has no such row or column.
 */
export function excerpt(table: Table, wanted: Wanted, size: ExcerptSize = {}): Excerpt {
	const { rows: tall = 5, columns: wide = 7 } = size;
	const column = wanted.column === undefined ? 0 : columnOf(table, wanted.column);
	return {
		rows: around(rowOf(table, wanted.row), table.rows.keys.length, tall),
		columns: around(column, table.columns.keys.length, wide)
	};
}

/** Up to `most` places from 0 to `count` − 1, with `wanted` among them. */
function around(wanted: number, count: number, most: number): number[] {
	const before = most > 2 ? 1 + (wanted % (most - 2)) : 0;
	const first = Math.max(0, Math.min(wanted - before, count - most));
	return Array.from({ length: Math.min(most, count) }, (_, i) => first + i);
}
