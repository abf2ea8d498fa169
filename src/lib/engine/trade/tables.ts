import type { Table } from './table/table.ts';

/*
 * Every table of the trade, for the page that lists them and for tests; whoever needs one of them
 * imports its own file.
 */

const files = import.meta.glob<Readonly<Record<string, unknown>>>('./tables/*.ts', {
	eager: true
});

export const tables: readonly Table[] = Object.values(files)
	.flatMap((exports) => Object.values(exports))
	.filter(isTable);

export function tablesOf(topic: string): readonly Table[] {
	return tables.filter((table) => table.topic === topic);
}

function isTable(value: unknown): value is Table {
	return typeof value === 'object' && value !== null && 'cells' in value && 'holds' in value;
}
