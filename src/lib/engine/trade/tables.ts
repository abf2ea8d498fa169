import type { Table } from './table/table.ts';
import * as exported from './tables/index.ts';

/*
 * Every table of the trade, for the page that lists them and for tests; whoever needs one of them
 * imports its own file.
 */

export const tables: readonly Table[] = Object.values<unknown>(exported).filter(isTable);

export function tablesOf(topic: string): readonly Table[] {
	return tables.filter((table) => table.topic === topic);
}

function isTable(value: unknown): value is Table {
	return typeof value === 'object' && value !== null && 'cells' in value && 'holds' in value;
}
