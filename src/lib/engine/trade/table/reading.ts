import { TradeError } from '../../solver/trade-function.ts';
import type { Axis, Key } from './axis.ts';
import type { Cell, Table } from './table.ts';

/*
 * Reading a table as the trade does: the row and the column that a key means, and the cell where
 * they cross. Whatever is not printed, or is suspect, is refused in one sentence.
 */

const longestList = 40;

/** @throws TradeError naming the rows there are, when the key means none of them. */
export function rowOf<R extends Key>(table: Table<R>, key: R): number {
	const place = table.rows.placeOf(key);
	if (place >= 0) return place;
	const around = table.stepped === 'above' || table.stepped === 'below' ? gap(table, key) : null;
	if (around) return around[table.stepped === 'above' ? 0 : 1];
	throw new TradeError(refusal(table, table.rows, key, 'row'));
}

/** @throws TradeError naming the columns there are, when the key means none of them. */
export function columnOf<C extends Key>(table: Table<Key, C>, key: C): number {
	const place = table.columns.placeOf(key);
	if (place >= 0) return place;
	throw new TradeError(refusal(table, table.columns, key, 'column'));
}

/** @throws TradeError beyond the edge, where nothing is printed, and where the print is suspect. */
export function cellAt<V extends Cell>(table: Table<Key, Key, V>, row: number, column: number): V {
	const cells = table.cells[row];
	const cell = cells?.[column];
	if (!cells || cell === undefined) {
		throw new TradeError(`That place is beyond the edge of ${table.called}.`);
	}
	if (cell === null) {
		const place = placeWords(table, row, column);
		throw new TradeError(`${capital(table.called)} prints nothing for ${place}.`);
	}
	const suspect = suspectAt(table, row, column);
	if (!suspect) return cell;
	throw new TradeError(
		`What ${table.called} prints for ${placeWords(table, row, column)} is suspect and is not used: ${suspect.why}.`
	);
}

/** Why a cell is suspect, if it is. */
export function suspectAt(table: Table, row: number, column: number) {
	return table.suspect.find(
		(one) => table.rows.placeOf(one.row) === row && table.columns.placeOf(one.column) === column
	);
}

/** The key of the one row that has this in its column. */
export function keyWith<R extends Key, C extends Key, V extends Cell>(
	table: Table<R, C, V>,
	column: C,
	value: V
): R {
	const at = columnOf(table, column);
	const sound = table.cells.map((cells, row) => (suspectAt(table, row, at) ? null : cells[at]));
	const key = table.rows.keys[sound.indexOf(value)]?.[0];
	if (key !== undefined) return key;
	const listed = sound.filter((one) => one !== null).join(', ');
	throw new TradeError(
		`${capital(table.called)} does not list ${named(String(value))}; choose one of ${listed}.`
	);
}

/**
 * Between two rows in a straight line, where a table that goes by steps means one of them.
 *
 * @throws TradeError when the key has a row of its own, or lies beyond the rows.
 */
export function between<R extends Key>(table: Table<R, Key, Cell>, key: R, column: number): number {
	const around = table.rows.placeOf(key) < 0 || !isPrinted(table, key) ? gap(table, key) : null;
	if (!around) throw new TradeError('There are no two rows that this lies between.');
	const [low = 0, high = 0] = around.map((row) => sizeOf(table, row));
	const [from = 0, to = 0] = around.map((row) => Number(cellAt(table, row, column)));
	return from + ((to - from) * (Number(key) - low)) / (high - low);
}

function isPrinted(table: Table, key: Key): boolean {
	return Math.abs(sizeOf(table, table.rows.placeOf(key)) - Number(key)) < 1e-6;
}

function sizeOf(table: Table, row: number): number {
	return Number(table.rows.keys[row]?.[0]);
}

/** The rows next to each other that a size lies between. */
function gap(table: Table, key: Key): readonly [above: number, below: number] | null {
	const above = table.rows.keys.findIndex((_, row) => {
		const [size, next] = [sizeOf(table, row), sizeOf(table, row + 1)];
		return (Number(key) - size) * (Number(key) - next) < 0;
	});
	return above < 0 ? null : [above, above + 1];
}

function refusal(table: Table, axis: Axis, key: Key, what: 'row' | 'column'): string {
	const asked = typeof key === 'string' ? named(key) : sized(axis, key);
	const none = `${capital(table.called)} has no ${what} for ${asked}`;
	if (axis.advice) return `${none}: ${axis.advice}.`;
	const keys = axis.keys.flat().map((one) => axis.write(one));
	if (axis.kind === 'text') return `${none}; it has ${keys.join(', ')}.`;
	const list =
		keys.length > longestList
			? `run from ${keys[0]} to ${keys.at(-1)}${axis.unit}`
			: `are ${keys.join(', ')}${axis.unit}`;
	return `${none}; its ${what}s ${list}: choose one of these.`;
}

function named(name: string): string {
	return name.trim().slice(0, 20) || 'that';
}

function sized(axis: Axis, size: number): string {
	return Number.isFinite(size) ? axis.write(size) + axis.unit : 'that';
}

function placeWords(table: Table, row: number, column: number): string {
	const first = ({ keys, unit, write }: Axis, at: number) =>
		(keys[at] ?? []).slice(0, 1).map((key) => write(key) + unit)[0] ?? 'that';
	const across = first(table.columns, column);
	return `${first(table.rows, row)}${table.columns.keys.length > 1 ? ` and ${across}` : ''}`;
}

export function capital(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}
