import { capital } from '../../quantity/capital.ts';
import { word } from '../../quantity/kinds.ts';
import { TradeError } from '../../solver/trade-function.ts';
import type { Axis, Key } from './axis.ts';
import type { Cell, Suspect, Table } from './table.ts';

/*
 * Reading a table as the trade does: the row and the column that a key means, and the cell where
 * they cross. Whatever is not printed, or is suspect, is refused in one sentence.
 */

const longestList = 40;

/** @throws TradeError naming the rows there are, when the key means none of them. */
export function rowOf<R extends Key>(table: Table<R>, key: R): number {
	return placeOn(table.rows, key, 'row', table);
}

/** @throws TradeError naming the columns there are, when the key means none of them. */
export function columnOf<C extends Key>(table: Table<Key, C>, key: C): number {
	return placeOn(table.columns, key, 'column', table);
}

function placeOn(axis: Axis, key: Key, what: string, { called }: Table): number {
	const place = axis.placeOf(key);
	if (place >= 0) return place;
	throw new TradeError(
		`${capital(called)} has no ${what} for ${said(axis, key)}${choices(axis, what)}.`
	);
}

/** @throws TradeError beyond the edge, where nothing is printed, and where the print is suspect. */
export function cellAt<V extends Cell>(table: Table<Key, Key, V>, row: number, column: number): V {
	const cell = table.cells[row]?.[column];
	if (cell === undefined) {
		throw new TradeError(`That place is beyond the edge of ${table.called}.`);
	}
	const suspect = suspectAt(table, row, column);
	if (cell !== null && !suspect) return cell;
	const across = table.columns.label && ` and ${said(table.columns, keyAt(table.columns, column))}`;
	const place = said(table.rows, keyAt(table.rows, row)) + across;
	throw new TradeError(
		suspect
			? `What ${table.called} prints for ${place} is suspect and is not used: ${suspect.why}.`
			: `${capital(table.called)} prints nothing for ${place}.`
	);
}

/** Why a cell is suspect, if it is. */
export function suspectAt(table: Table, row: number, column: number): Suspect | undefined {
	return table.suspect.find(
		(one) => table.rows.placeOf(one.row) === row && table.columns.placeOf(one.column) === column
	);
}

/** The first key of a row or column. */
export function keyAt<K extends Key>(axis: Axis<K>, place: number): K | '' {
	return axis.keys[place]?.[0] ?? '';
}

/** A key in a sentence. Whatever was typed may stand there, so it is kept short. */
function said({ unit, write }: Axis, key: Key): string {
	if (typeof key === 'number') return Number.isFinite(key) ? write(key) + unit : 'that';
	return key.trim().slice(0, 20) || 'that';
}

const listed = new WeakMap<Axis, string>();

/** What there is to choose from. Written once: a slip often ends here, and nobody reads it. */
function choices(axis: Axis, what: string): string {
	const known = listed.get(axis) ?? listOf(axis, what);
	listed.set(axis, known);
	return known;
}

function listOf({ advice, keys, kind, unit, write }: Axis, what: string): string {
	if (advice) return `: ${advice}`;
	const all = keys.flat().map((key) => write(key));
	if (kind === word) return `; it has ${all.join(', ')}`;
	const list =
		all.length > longestList ? `run from ${all[0]} to ${all.at(-1)}` : `are ${all.join(', ')}`;
	return `; its ${what}s ${list}${unit}: choose one of these`;
}
