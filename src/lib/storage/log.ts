import { unwrap } from 'idb';
import {
	compareEvents,
	type KnownEvent,
	knownEvent,
	type LogEvent,
	readEvent
} from '$lib/engine/schedule/event.ts';
import { allOf, type Learner, write, type Writing } from './database.ts';
import { advanceFolds } from './fold.ts';
import { freeNickname } from './nickname.ts';
import { pagesOf, type Span } from './pages.ts';
import type { Store } from './store.ts';
import { LearnerRemoved } from './trouble.ts';

/** Adds an event; once this returns, it is on the disk. */
export async function append(store: Store, event: LogEvent): Promise<void> {
	await merge(store, [event]);
}

/**
 * Adds the events whose ids are not in the log yet, all or none; nothing is overwritten.
 *
 * @returns how many were new
 */
export async function merge(store: Store, events: readonly LogEvent[]): Promise<number> {
	const broken = events.find((event) => !readEvent(event).ok);
	if (broken) throw new Error(`unreadable event: ${broken.type} ${broken.id}`);
	const added = await writeEvents(store, (_, add) => add(events));
	if (added.length > 0) store.changed([...new Set(added.map(({ learner }) => learner))]);
	return added.length;
}

/** Which events of a log are wanted. */
export interface Choice extends Span {
	readonly limit?: number;
	/** Whether those of a type are wanted; all of them unless told. */
	readonly of?: (type: string) => boolean;
}

/** A learner's events that this version can read, oldest first unless asked otherwise. */
export async function* events(
	store: Store,
	learner: string,
	{ limit = Infinity, of = () => true, ...span }: Choice = {}
): AsyncGenerator<KnownEvent> {
	const table = () => store.db.transaction('events').store;
	let given = 0;
	for await (const page of pagesOf(table, learner, span)) {
		for (const raw of page) {
			if (given >= limit) return;
			const event = of(raw.type) ? knownEvent(raw) : undefined;
			if (!event) continue;
			given++;
			yield event;
		}
	}
}

/** How many events a learner has. */
export function count(store: Store, learner: string): Promise<number> {
	return store.db.count('events', allOf(learner));
}

/** Adds events inside a transaction, and returns the new ones. */
export type Add = (events: readonly LogEvent[]) => Promise<LogEvent[]>;

/** Writes all of `work` or nothing, and what it adds into the copy of the log too. */
export async function writeEvents<T>(
	store: Store,
	work: (tx: Writing, add: Add) => Promise<T>
): Promise<T> {
	const added: LogEvent[] = [];
	const result = await write(store.db, (tx) =>
		work(tx, async (events) => {
			const own = await addEvents(tx, store, events);
			added.push(...own);
			return own;
		})
	);
	await copyEvents(store, added);
	return result;
}

/** Puts events that are in the log into its copy; what fails there is made good the next time. */
export async function copyEvents({ db, copy }: Store, added: readonly LogEvent[]): Promise<void> {
	const opened = await copy;
	if (!opened) return;
	try {
		await opened.add(added);
		// Another tab may have removed the learner between the two writes.
		for (const learner of byLearner(added).keys())
			if (!(await db.getKey('learners', learner))) await opened.remove(learner);
	} catch {
		// The log holds them; the copy catches up the next time.
	}
}

/** Adds events inside a transaction to the log alone, and returns the new ones. */
export async function addEvents(
	tx: Writing,
	store: Pick<Store, 'folds'>,
	events: readonly LogEvent[]
): Promise<LogEvent[]> {
	const added = await addMissingEvents(tx, events);
	for (const [learner, own] of byLearner(added)) {
		await noteOnLearner(tx, learner, own);
		await advanceFolds(tx, store.folds, learner, own);
	}
	return added;
}

/** Adds events inside a transaction, noting them nowhere else, and returns the new ones in order. */
export async function addMissingEvents(
	tx: Writing,
	events: readonly LogEvent[]
): Promise<LogEvent[]> {
	const sorted = [...new Map(events.map((event) => [event.id, event])).values()].sort(
		compareEvents
	);
	const table = unwrap(tx.objectStore('events'));
	const known = new Set<LogEvent>();
	// The database refuses what it has, by key or by id. To ask before would double the requests,
	// and a promise for each would cost as much again.
	const requests = sorted.map((event) => {
		const request = table.add(event);
		request.onerror = (refusal) => {
			if (request.error?.name !== 'ConstraintError') return;
			refusal.preventDefault();
			refusal.stopPropagation();
			known.add(event);
		};
		return request;
	});
	// They are answered in the order they were made in.
	const last = requests.at(-1);
	if (last) await settled(last);
	return sorted.filter((event) => !known.has(event));
}

/** Resolves once a request has its answer, also where that is a refusal that ends nothing. */
function settled(request: IDBRequest): Promise<void> {
	return new Promise((resolve, reject) => {
		request.addEventListener('success', () => resolve());
		request.addEventListener('error', ({ defaultPrevented }) => {
			if (defaultPrevented) resolve();
			else reject(request.error);
		});
	});
}

export function byLearner(events: readonly LogEvent[]): Map<string, LogEvent[]> {
	const groups = new Map<string, LogEvent[]>();
	for (const event of events) {
		const group = groups.get(event.learner);
		if (group) group.push(event);
		else groups.set(event.learner, [event]);
	}
	return groups;
}

/** Notes new events of a learner, given in order, in the learner's row. */
export async function noteOnLearner(
	tx: Writing,
	id: string,
	added: readonly LogEvent[]
): Promise<void> {
	const table = tx.objectStore('learners');
	const learner = await table.get(id);
	if (!learner) throw new LearnerRemoved();
	const created = Math.min(learner.created, added[0]?.at ?? Infinity);
	const unsaved = learner.unsaved + added.length;
	await table.put({ ...learner, ...(await namingIn(tx, learner, added)), created, unsaved });
}

// The newest naming counts, wherever and in whatever order it arrives.
async function namingIn(
	tx: Writing,
	learner: Learner,
	added: readonly LogEvent[]
): Promise<Pick<Learner, 'nickname' | 'named'>> {
	const newest = added.map(knownEvent).findLast((event) => event?.type === 'learner');
	if (!newest || compareEvents(newest, learner.named) <= 0) return learner;
	const all = await tx.objectStore('learners').getAll();
	const taken = all.filter(({ id }) => id !== learner.id).map(({ nickname }) => nickname);
	const { at, id, nickname } = newest;
	return { nickname: freeNickname(nickname, taken), named: { at, id } };
}
