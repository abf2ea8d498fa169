import type { Cell, Table } from '../../trade/table/table.ts';
import type { Key } from '../../trade/table/axis.ts';
import { excerpt, type ExcerptSize, type Wanted } from '../../trade/table/excerpt.ts';
import { suspectAt } from '../../trade/table/reading.ts';
import type { Drawing } from '../drawing.ts';
import { chartTable } from './chart-table.ts';

/** How keys and cells are lettered; by the table's own way, in its own units, when left out. */
export interface ExcerptNotes extends ExcerptSize {
	readonly row?: (key: Key) => string;
	readonly cell?: (value: Cell, column: Key) => string;
	/** Lines below the chart. */
	readonly below?: readonly string[];
}

/**
 * Part of a table around what is wanted, as a drawing on a task or in a drawer. A cell with nothing
 * printed, or nothing that can be trusted, is a dash.
 *
 * @throws TradeError when the table has no such row or column.
 */
export function chartExcerpt(table: Table, wanted: Wanted, notes: ExcerptNotes = {}): Drawing {
	const { columns, rows } = excerpt(table, wanted, notes);
	const { row = (key: Key) => table.rows.write(key), below = [] } = notes;
	const cell = (...at: [row: number, column: number]) => {
		const value = suspectAt(table, ...at) ? null : table.cells[at[0]]?.[at[1]];
		if (value === null || value === undefined) return '–';
		if (!notes.cell) return table.holds[at[1]]?.write(value) ?? '';
		return notes.cell(value, table.columns.keys[at[1]]?.[0] ?? '');
	};
	const headings = columns.map((at) =>
		(table.columns.keys[at] ?? []).map((key) => table.columns.write(key))
	);
	return {
		title: titleOf(table),
		isChart: true,
		shapes: chartTable(
			[[table.rows.label], ...headings],
			rows.map((at) => [
				...(table.rows.keys[at] ?? []).slice(0, 1).map(row),
				...columns.map((column) => cell(at, column))
			]),
			below
		)
	};
}

/**
 * Says which row a size stands in that has none of its own, such as a sheet of the older gauge series.
 *
 * @param said the size
 */
export function sharedRow(
	{ rows }: Table,
	key: Key,
	said: string,
	write: (row: Key) => string = (row) => rows.write(row)
): string[] {
	const [row = key] = rows.keys[rows.placeOf(key)] ?? [];
	return row === key ? [] : [`${said} stands in the row ${write(row)}.`];
}

function titleOf({ title, rows, columns }: Table): string {
	const across = columns.label
		? ` and a column for each ${columns.label.toLowerCase()}`
		: ` and columns for ${columns.keys.map(([key = '']) => columns.write(key).toLowerCase()).join(', ')}`;
	return `Part of the chart “${title}”: a row for each ${rows.label.toLowerCase()}${across}.`;
}
