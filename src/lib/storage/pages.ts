import type { LogEvent } from '$lib/engine/schedule/event.ts';

/** The events of all learners, in a transaction, whatever else that one is on. */
export interface EventTable {
	getAll(range: IDBKeyRange, count: number): Promise<LogEvent[]>;
	openCursor(range: IDBKeyRange, direction: 'prev'): Promise<EventCursor | null>;
}

interface EventCursor {
	readonly value: LogEvent;
	continue(): Promise<EventCursor | null>;
}

/** Events read or written at a time. */
export const pageLength = 500;

/** Events written in one transaction where there are many: its cost grows with the square of them. */
export const portionLength = 1000;

/** A list in pieces of at most `portionLength`; an empty list is one empty piece. */
export function portionsOf<T>(list: readonly T[]): T[][] {
	const count = Math.max(1, Math.ceil(list.length / portionLength));
	return Array.from({ length: count }, (_, i) =>
		list.slice(i * portionLength, (i + 1) * portionLength)
	);
}

/** Part of a learner's log. */
export interface Span {
	/** First time that belongs to it, in milliseconds since 1970-01-01 UTC. */
	readonly from?: number;
	/** First time after it. */
	readonly to?: number;
	readonly newestFirst?: boolean;
}

/**
 * A learner's log, a page at a time, so that memory stays small however long it is. `table` is
 * either one to read all from, or gives a new one for each page: a transaction ends while other
 * work is waited for.
 */
export async function* pagesOf(
	table: EventTable | (() => EventTable),
	learner: string,
	span: Span = {}
): AsyncGenerator<LogEvent[]> {
	const { from = -Infinity, to = Infinity, newestFirst = false } = span;
	if (!(from < to)) return;
	let low: IDBValidKey = [learner, from];
	let high: IDBValidKey = [learner, to];
	for (;;) {
		const range = IDBKeyRange.bound(low, high, true, true);
		const source = typeof table === 'function' ? table() : table;
		const page = await (newestFirst ? lastOf(source, range) : source.getAll(range, pageLength));
		if (page.length > 0) yield page;
		const end = page.at(-1);
		if (!end || page.length < pageLength) return;
		if (newestFirst) high = [learner, end.at, end.id];
		else low = [learner, end.at, end.id];
	}
}

async function lastOf(table: EventTable, range: IDBKeyRange): Promise<LogEvent[]> {
	const page: LogEvent[] = [];
	let cursor = await table.openCursor(range, 'prev');
	while (cursor && page.length < pageLength) {
		page.push(cursor.value);
		cursor = await cursor.continue();
	}
	return page;
}
