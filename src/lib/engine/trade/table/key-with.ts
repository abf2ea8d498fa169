import { TradeError } from '../../solver/trade-function.ts';
import type { Key } from './axis.ts';
import { capital } from '../../quantity/capital.ts';
import { columnOf, keyAt, suspectAt } from './reading.ts';
import type { Cell, Table } from './table.ts';

/**
 * The key of the one row that has this in its column: a table read backwards.
 *
 * @throws TradeError naming what the column lists, when no row has it.
 */
export function keyWith<R extends Key, C extends Key, V extends Cell>(
	table: Table<R, C, V>,
	column: C,
	value: V
): R {
	const at = columnOf(table, column);
	const sound = table.cells.map((cells, row) => (suspectAt(table, row, at) ? null : cells[at]));
	const key = keyAt(table.rows, sound.indexOf(value));
	if (key !== '') return key;
	const listed = sound.filter((one) => one !== null).join(', ');
	throw new TradeError(
		`${capital(table.called)} does not list ${String(value).slice(0, 20)}; choose one of ${listed}.`
	);
}
