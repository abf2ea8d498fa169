import {
	type DBSchema,
	type IDBPDatabase,
	type IDBPTransaction,
	openDB,
	type StoreNames
} from 'idb';
import type { LogEvent, Place } from '$lib/engine/schedule/event.ts';
import type { Trouble } from './trouble.ts';

/** A learner on this device. */
export interface Learner {
	readonly id: string;
	readonly nickname: string;
	/** The event that gave the nickname. */
	readonly named: Place;
	/** Time of the learner's first event. */
	readonly created: number;
	/** When the learner was last at work here. */
	readonly used: number;
	/** Events that are in no backup yet. */
	readonly unsaved: number;
	/** When the last backup was made; null when there is none. */
	readonly backedUp: number | null;
}

/** The row of a learner whose log is about to name them, and of whom no backup is known. */
export function newLearner(parts: Pick<Learner, 'id' | 'nickname' | 'created' | 'used'>): Learner {
	return { ...parts, named: { at: 0, id: '' }, unsaved: 0, backedUp: null };
}

/** What a fold made of one learner's log. While a row is there, it holds for the whole log. */
export interface FoldRow {
	readonly learner: string;
	readonly fold: string;
	readonly version: number;
	/** The newest event in it; null when the log was empty. */
	readonly last: Place | null;
	readonly state: unknown;
}

export interface Tables extends DBSchema {
	/** In the order of the log, learner by learner. */
	events: {
		key: [learner: string, at: number, id: string];
		value: LogEvent;
		indexes: { byId: string };
	};
	learners: { key: string; value: Learner };
	folds: { key: [learner: string, fold: string]; value: FoldRow };
}

export type Database = IDBPDatabase<Tables>;
type Names = StoreNames<Tables>[];
export type Writing = IDBPTransaction<Tables, Names, 'readwrite'>;
type Upgrading = IDBPTransaction<Tables, Names, 'versionchange'>;

/** Times are milliseconds since 1970-01-01 UTC. */
export type Migration = (db: Database, tx: Upgrading) => void;

/** How the database got its shape: number n, counted from 1, makes version n. Only ever added to. */
export const migrations: readonly Migration[] = [
	(db) => {
		// By this key a log is read in order and removed at once; the id alone would need a search.
		const events = db.createObjectStore('events', { keyPath: ['learner', 'at', 'id'] });
		events.createIndex('byId', 'id', { unique: true });
		db.createObjectStore('learners', { keyPath: 'id' });
		db.createObjectStore('folds', { keyPath: ['learner', 'fold'] });
	}
];

/**
 * Opens the database, made or brought up to date where needed. `onTrouble` hears of what happens
 * while it opens or later; what makes opening fail is thrown.
 */
export function openDatabase(
	name: string,
	onTrouble: (trouble: Trouble) => void
): Promise<Database> {
	return openDB<Tables>(name, migrations.length, {
		upgrade: migrate,
		blocked: () => onTrouble('blocked'),
		blocking(_current, _wanted, event) {
			// A newer version waits in another tab; what is being written is still finished.
			if (event.target instanceof IDBDatabase) event.target.close();
			onTrouble('outdated');
		},
		terminated: () => onTrouble('closed')
	});
}

/** Runs the migrations after version `from` up to and with version `to`. */
export function migrate(db: Database, from: number, to: number | null, tx: Upgrading): void {
	// Opening fails with the same error.
	tx.done.catch(() => {});
	for (const migration of migrations.slice(from, to ?? from)) migration(db, tx);
}

/** All that a learner has in the events or in the folds. */
export function allOf(learner: string): IDBKeyRange {
	return IDBKeyRange.bound([learner], [learner, []]);
}

/** Writes all of `work` or nothing, and returns once it is on the disk. */
export async function write<T>(db: Database, work: (tx: Writing) => Promise<T>): Promise<T> {
	const tx = db.transaction(['events', 'learners', 'folds'], 'readwrite', {
		durability: 'strict'
	});
	try {
		const result = await work(tx);
		await tx.done;
		return result;
	} catch (error) {
		await abort(tx);
		// What ended the transaction says more than the requests that ended with it.
		throw tx.error ?? error;
	}
}

async function abort(tx: Writing): Promise<void> {
	try {
		tx.abort();
	} catch {
		// It has ended by itself.
	}
	await tx.done.catch(() => {});
}
