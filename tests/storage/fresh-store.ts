import { deleteDB } from 'idb';
import { onTestFinished } from 'vitest';
import type { LogEvent } from '../../src/lib/engine/schedule/event.ts';
import type { Fold } from '../../src/lib/storage/fold.ts';
import { openStore, type Store } from '../../src/lib/storage/store.ts';
import type { Trouble } from '../../src/lib/storage/trouble.ts';
import { kit, sam } from './event-arbitrary.ts';

/** A fold that hangs on the order of the events, so that a wrong order shows. */
export const trail: Fold<string[]> = {
	name: 'trail',
	version: 1,
	empty: [],
	apply: (state, event) => [...state, `${event.at} ${event.id}`]
};

/** A fold that changes the state it is handed, as one may. */
export const tally: Fold<Record<string, number>> = {
	name: 'tally',
	version: 1,
	empty: {},
	apply(state, event) {
		state[event.type] = (state[event.type] ?? 0) + 1;
		return state;
	}
};

export interface OpenOptions {
	readonly name?: string;
	readonly folds?: readonly Fold<unknown>[];
	readonly learners?: readonly string[];
	readonly troubles?: Trouble[];
	readonly onRecovered?: (done: number, all: number) => void;
}

let stores = 0;

/** A name that no other database of the tests has. */
export function freshName(): string {
	stores++;
	return `test-${stores}-${crypto.randomUUID()}`;
}

/** A store with Sam and Kit and nothing in their logs. It is gone when the test ends. */
export async function freshStore(options: OpenOptions = {}): Promise<Store> {
	const store = await openAgain(options);
	onTestFinished(() => wipe(store));
	for (const id of options.learners ?? [sam, kit]) await addBare(store, id);
	return store;
}

/** A second connection to a store, as another tab has it. */
export function openAgain(options: OpenOptions = {}): Promise<Store> {
	const { name, folds, troubles = [], onRecovered } = options;
	return openStore({
		...(onRecovered && { onRecovered }),
		name: name ?? freshName(),
		folds: folds ?? [trail, tally],
		onTrouble: (trouble) => troubles.push(trouble)
	});
}

export async function wipe(store: Store): Promise<void> {
	store.close();
	await deleteDB(store.db.name);
	await deleteCopy(store);
}

/** As a browser does that finds the files of the copy damaged. */
export async function deleteCopy({ db }: Store): Promise<void> {
	const factory = await copies();
	await new Promise((resolve) => (factory.deleteDatabase(db.name).onsuccess = resolve));
}

/** Everything in the copy of a store. */
export async function copied({ db }: Store): Promise<LogEvent[]> {
	const factory = await copies();
	const opened = await new Promise<IDBDatabase>((resolve) => {
		const opening = factory.open(db.name);
		opening.onsuccess = () => resolve(opening.result);
	});
	const reading = opened.transaction('events').objectStore('events').getAll();
	await new Promise((resolve) => (reading.onsuccess = resolve));
	opened.close();
	return reading.result as LogEvent[];
}

async function copies(): Promise<IDBFactory> {
	const { storageBuckets } = navigator as unknown as {
		storageBuckets: { open(name: string): Promise<{ indexedDB: IDBFactory }> };
	};
	return (await storageBuckets.open('bucktail-copy')).indexedDB;
}

/** A learner with an empty log. */
async function addBare(store: Store, id: string): Promise<void> {
	await store.db.add('learners', {
		id,
		nickname: id === sam ? 'Sam' : id === kit ? 'Kit' : id,
		named: { at: 0, id: '' },
		created: 0,
		used: 0,
		unsaved: 0,
		backedUp: null
	});
}

/** Every event in a store: learner by learner, in the order of the log. */
export function allEvents(store: Store): Promise<LogEvent[]> {
	return store.db.getAll('events');
}

export async function collect<T>(source: AsyncIterable<T>): Promise<T[]> {
	const list: T[] = [];
	for await (const item of source) list.push(item);
	return list;
}

/** Everything in every object store of a database. */
export async function everything({ db }: Store): Promise<Record<string, unknown[]>> {
	const names = [...db.objectStoreNames];
	return Object.fromEntries(
		await Promise.all(names.map(async (name) => [name, await db.getAll(name)] as const))
	);
}
