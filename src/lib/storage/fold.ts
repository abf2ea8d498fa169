import {
	compareEvents,
	type KnownEvent,
	knownEvent,
	type LogEvent
} from '$lib/engine/schedule/event.ts';
import { allOf, type FoldRow, write, type Writing } from './database.ts';
import { pagesOf } from './pages.ts';
import type { Store } from './store.ts';

/** Something worked out from a learner's log, event by event, in the order of the log. */
export interface Fold<S> {
	readonly name: string;
	/** Raised when the same log would now give another state, or another event type is read. */
	readonly version: number;
	/** The state of an empty log: plain data, and small, since every attempt stores it anew. */
	readonly empty: S;
	/** The state after one more event; it may change and return the state it is handed. */
	apply(state: S, event: KnownEvent): S;
}

/** The state of a fold: from the cache, or from the whole log where there is no cache. */
export async function foldState<S>(store: Store, fold: Fold<S>, learner: string): Promise<S> {
	const row = await store.db.get('folds', [learner, fold.name]);
	if (row?.version === fold.version) return stateIn<S>(row);
	return write(store.db, async (tx) => stateIn<S>(await rebuild(tx, fold, learner)));
}

// A row of this name and version was written by this very fold.
function stateIn<S>(row: FoldRow): S {
	return row.state as S;
}

/** The state after these events, given in the order of the log, from `state` on. */
export function foldOver<S>(
	fold: Fold<S>,
	events: Iterable<unknown>,
	state: S = structuredClone(fold.empty)
): S {
	let next = state;
	for (const event of events) {
		const known = knownEvent(event);
		if (known) next = fold.apply(next, known);
	}
	return next;
}

async function rebuild<S>(tx: Writing, fold: Fold<S>, learner: string): Promise<FoldRow> {
	let state = structuredClone(fold.empty);
	let last: LogEvent | undefined;
	for await (const page of pagesOf(tx.objectStore('events'), learner)) {
		state = foldOver(fold, page, state);
		last = page.at(-1);
	}
	const row = rowOf(fold, learner, last, state);
	// A learner who was removed leaves no trace.
	if (await tx.objectStore('learners').getKey(learner)) await tx.objectStore('folds').put(row);
	return row;
}

function rowOf<S>(fold: Fold<S>, learner: string, last: LogEvent | undefined, state: S): FoldRow {
	const { name, version } = fold;
	return { learner, fold: name, version, last: last ? { at: last.at, id: last.id } : null, state };
}

/**
 * Brings the cached folds of a learner up to date with events just added, given in order. What
 * cannot be carried on is dropped, to be rebuilt when it is next asked for.
 */
export async function advanceFolds(
	tx: Writing,
	folds: readonly Fold<unknown>[],
	learner: string,
	added: readonly LogEvent[]
): Promise<void> {
	const table = tx.objectStore('folds');
	for (const row of await table.getAll(allOf(learner))) {
		const next = advanced(row, folds, added);
		await (next ? table.put(next) : table.delete([learner, row.fold]));
	}
}

function advanced(
	row: FoldRow,
	folds: readonly Fold<unknown>[],
	added: readonly LogEvent[]
): FoldRow | undefined {
	const fold = folds.find(({ name, version }) => name === row.fold && version === row.version);
	const [first] = added;
	if (!fold || !first || (row.last && compareEvents(first, row.last) <= 0)) return undefined;
	try {
		return rowOf(fold, row.learner, added.at(-1), foldOver(fold, added, row.state));
	} catch {
		// A mistake in a fold must not lose an answer; it shows when the fold is rebuilt.
		return undefined;
	}
}
