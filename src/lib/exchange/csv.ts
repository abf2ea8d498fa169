import { dsvFormat } from 'd3-dsv';

/*
 * Tables as RFC 4180 has them. Only the parts of the library that make no code: its readers of
 * named columns do, and a page may not.
 */

export type Cell = string | number | null;

/** What a spreadsheet would take for a formula, full-width signs among them. */
const formula = /^\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^[\t\r\n]/;

const byteOrderMark = '\ufeff';

/** A table, its first row the names of its columns. Text that would be a formula stays text. */
export function writeCsv(rows: readonly (readonly Cell[])[]): string {
	const { formatRow } = dsvFormat(',');
	const lines = rows.map((row) => formatRow(row.map(cellText)));
	return byteOrderMark + lines.map((line) => `${line}\r\n`).join('');
}

function cellText(cell: Cell): string {
	if (typeof cell !== 'string') return cell === null ? '' : String(cell);
	return formula.test(cell) ? `'${cell}` : cell;
}

export type TableReading =
	| { readonly ok: true; readonly rows: readonly (readonly string[])[] }
	| { readonly ok: false; readonly sentence: string };

/** Reads a table with commas, semicolons or tabs; rows that are empty are left out. */
export function readCsv(text: string): TableReading {
	const [, named, body = ''] = /^\ufeff?(?:sep=(.)\r?\n)?([^]*)$/.exec(text) ?? [];
	if ((body.match(/"/g)?.length ?? 0) % 2 === 1) {
		return { ok: false, sentence: 'A quotation mark in the table is not closed; close it.' };
	}
	const rows = dsvFormat(named ?? parting(body)).parseRows(body);
	return {
		ok: true,
		rows: rows
			.map((row) => row.map((cell) => cell.trim()))
			.filter((row) => row.some((cell) => cell !== ''))
	};
}

/** What parts the columns: whatever stands most often in the first line, outside quotes. */
function parting(text: string): string {
	const line = text.replace(/"[^"]*"/g, '').split(/\r?\n/, 1)[0] ?? '';
	const counts = [',', ';', '\t'].map((mark) => ({ mark, n: line.split(mark).length }));
	return counts.sort((a, b) => b.n - a.n)[0]?.mark ?? ',';
}
