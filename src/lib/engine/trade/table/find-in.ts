import { cite } from '../documents.ts';
import type { Excerpt } from './excerpt.ts';
import type { Axis } from './axis.ts';
import type { Table } from './table.ts';

/**
 * The rows and columns of a table that a search means; null when it means another table. Every word
 * of it must be the beginning of a row's name, a column's, or what a cell holds, or stand in the
 * title or the source: `2024-T3 0.063` is a column and a row.
 *
 * @param name what the table is called beside its title
 */
export function findIn(table: Table, search: string, name = ''): Excerpt | null {
	let rows = table.rows.keys.map((_, row) => row);
	let columns = table.columns.keys.map((_, column) => column);
	for (const word of wordsOf(search)) {
		const inRows = rows.filter((row) => isIn(namesOf(table.rows, row), word));
		const inColumns = columns.filter((column) => isIn(namesOf(table.columns, column), word));
		const inCells = rows.filter((row) => isIn(cellsOf(table, row), word));
		if (inRows.length > 0) rows = inRows;
		else if (inColumns.length > 0) columns = inColumns;
		else if (inCells.length > 0) rows = inCells;
		else if (!about(table, name).includes(word)) return null;
	}
	return { rows, columns };
}

/** `#30` and `No. 30` are the same, and so are `.063` and `0.063`. */
function wordsOf(search: string): string[] {
	const words = search.toLowerCase().replaceAll('#', ' ').split(/\s+/);
	return words
		.filter((word) => word !== '' && word !== 'no.')
		.map((word) => word.replace(/^\./, '0.'));
}

function namesOf({ keys, write }: Axis, place: number): string[] {
	return (keys[place] ?? []).map((key) => write(key));
}

function cellsOf({ cells, holds }: Table, row: number): string[] {
	return (cells[row] ?? []).flatMap((cell, column) =>
		cell === null ? [] : (holds[column]?.write(cell) ?? [])
	);
}

function isIn(texts: readonly string[], word: string): boolean {
	return texts.some((text) => wordsOf(text).some((one) => one.startsWith(word)));
}

function about({ title, source }: Table, name: string): string {
	return `${name} ${title} ${cite(source)}`.toLowerCase();
}
