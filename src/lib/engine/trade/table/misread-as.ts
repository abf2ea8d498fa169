import { word } from '../../quantity/kinds.ts';
import { TradeError, type TradeFunction } from '../../solver/trade-function.ts';
import { text } from '../shown.ts';
import type { Key } from './axis.ts';
import type { LookUp } from './look-up.ts';
import { capital } from '../../quantity/capital.ts';
import { cellAt, keyAt, rowOf } from './reading.ts';
import type { Table } from './table.ts';

/** How far off the eye lands, in rows and columns, and how that is shown in a formula. */
export const moves = {
	above: [-1, 0, 'one row above'],
	below: [1, 0, 'one row below'],
	twoAbove: [-2, 0, 'two rows above'],
	twoBelow: [2, 0, 'two rows below'],
	left: [0, -1, 'one column left of'],
	right: [0, 1, 'one column right of'],
	twoLeft: [0, -2, 'two columns left of'],
	twoRight: [0, 2, 'two columns right of'],
	threeLeft: [0, -3, 'three columns left of'],
	threeRight: [0, 3, 'three columns right of'],
	aboveLeft: [-1, -1, 'a row above and a column left of'],
	aboveRight: [-1, 1, 'a row above and a column right of'],
	belowLeft: [1, -1, 'a row below and a column left of'],
	belowRight: [1, 1, 'a row below and a column right of']
} as const satisfies Readonly<
	Record<string, readonly [down: number, right: number, shown: string]>
>;

/** Where the eye lands beside the wanted cell, or between the rows. */
export type Misreading = keyof typeof moves | 'between';

/** The name that formulas call a misread look-up by: `finalDrill`, `above` → `finalDrillAbove`. */
export function misreadName(lookUp: string, misreading: Misreading): string {
	return lookUp + capital(misreading);
}

/**
 * The ways a look-up can be misread. A table of one row has no row above; a neighbouring column
 * must hold the same kind; row and column are both missed only where both are looked for; and only
 * where a table goes by steps is it wrong to read between rows.
 */
export function misreadingsOf({ table, column, gives }: LookUp): Misreading[] {
	const beside = (right: number) =>
		column === null
			? table.columns.keys.length > 1
			: table.holds[column + right]?.kind.dimension.name === gives;
	const several = table.rows.keys.length > 1;
	const aslant = several && column === null && table.columns.keys.length > 1;
	const can = ([down, right]: (typeof moves)[keyof typeof moves]) => {
		if (right === 0) return several;
		return down === 0 ? beside(right) : aslant;
	};
	const moved = (Object.keys(moves) as (keyof typeof moves)[]).filter((one) => can(moves[one]));
	const isStepped = several && table.stepped && gives !== word.dimension.name;
	return isStepped ? [...moved, 'between'] : moved;
}

/** The look-up with the eye slipped: a function that formulas call by `misreadName`. */
export function misreadAs(lookUp: LookUp, misreading: Misreading): TradeFunction {
	const { table, takes, gives, show, find } = lookUp;
	const [down, right, shown] =
		misreading === 'between' ? [0, 0, 'between the rows around'] : moves[misreading];
	return {
		takes,
		gives,
		run: (...keys: Key[]) => {
			const { row, column } = find(keys);
			if (misreading === 'between') return between(table, row, column);
			return cellAt(table, rowOf(table, row) + down, column + right);
		},
		show: (values) => [text(`${shown} `), ...show(values)]
	};
}

/**
 * In a straight line between the rows around a key.
 *
 * @throws TradeError when the key is printed, or lies beyond the rows.
 */
function between(table: Table, key: Key, column: number): number {
	const size = (row: number) => Number(keyAt(table.rows, row));
	const above = table.rows.keys.findIndex(
		(_, row) => (Number(key) - size(row)) * (Number(key) - size(row + 1)) < 0
	);
	const printed = Math.abs(size(table.rows.placeOf(key)) - Number(key)) < 1e-6;
	if (above < 0 || printed) throw new TradeError('There are no two rows that this lies between.');
	const [from, to] = [above, above + 1].map((row) => Number(cellAt(table, row, column)));
	const share = (Number(key) - size(above)) / (size(above + 1) - size(above));
	return (from ?? NaN) + ((to ?? NaN) - (from ?? NaN)) * share;
}
