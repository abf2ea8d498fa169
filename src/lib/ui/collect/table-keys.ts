/** A cell: row and column, from 0. */
export interface Place {
	readonly row: number;
	readonly column: number;
}

const pageRows = 10;

/** Where a key leads in a table of that size; null for a key that does not move. */
export function fromTable(
	key: string,
	{ row, column }: Place,
	{ rows, columns }: { rows: number; columns: number }
): Place | null {
	const moves: Readonly<Record<string, Place>> = {
		ArrowUp: { row: row - 1, column },
		ArrowDown: { row: row + 1, column },
		ArrowLeft: { row, column: column - 1 },
		ArrowRight: { row, column: column + 1 },
		PageUp: { row: row - pageRows, column },
		PageDown: { row: row + pageRows, column },
		Home: { row, column: 0 },
		End: { row, column: columns - 1 }
	};
	const move = Object.hasOwn(moves, key) ? moves[key] : undefined;
	if (!move || rows === 0 || columns === 0) return null;
	const within = (at: number, count: number) => Math.min(Math.max(0, at), count - 1);
	return { row: within(move.row, rows), column: within(move.column, columns) };
}
