import { deleteDB, openDB } from 'idb';
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import {
	migrate,
	type Migration,
	migrations,
	openDatabase,
	type Tables
} from '../../src/lib/storage/database.ts';
import { append } from '../../src/lib/storage/log.ts';
import { type Trouble, troubleOf } from '../../src/lib/storage/trouble.ts';
import { attempt } from './event-arbitrary.ts';
import { everything, freshName, freshStore } from './fresh-store.ts';

type Rows = Readonly<Record<string, readonly unknown[]>>;

/** For each migration, by number: what may stand in the version before it, and what becomes of it. */
const cases: Readonly<Record<number, { before: Rows; after: Rows }>> = {
	1: { before: {}, after: { events: [], folds: [], learners: [] } }
};

test('every migration has a case', () => {
	expect(Object.keys(cases)).toEqual(migrations.map((_, i) => String(i + 1)));
});

test.each(Object.entries(cases))('migration %s', async (number, { before, after }) => {
	const name = freshName();
	onTestFinished(() => deleteDB(name));
	const to = Number(number);
	if (to > 1) {
		const old = await openDB<Tables>(name, to - 1, { upgrade: migrate });
		for (const store of old.objectStoreNames) {
			for (const row of before[store] ?? []) await old.put(store, row as never);
		}
		old.close();
	}
	const db = await openDB<Tables>(name, to, { upgrade: migrate });
	const names = [...db.objectStoreNames];
	const rows = await Promise.all(names.map((store) => db.getAll(store)));
	expect(Object.fromEntries(names.map((store, i) => [store, rows[i]]))).toEqual(after);
	db.close();
});

test('the newest version has these stores and keys', async () => {
	const { db } = await freshStore();
	const tx = db.transaction(['events', 'folds', 'learners']);
	const shape = [...db.objectStoreNames].map((name) => {
		const store = tx.objectStore(name);
		const indexes = [...store.indexNames].map((index) => [index, store.index(index).keyPath]);
		return [name, store.keyPath, Object.fromEntries(indexes)];
	});
	expect(shape).toEqual([
		['events', ['learner', 'at', 'id'], { byId: 'id' }],
		['folds', ['learner', 'fold'], {}],
		['learners', 'id', {}]
	]);
	expect(db.version).toBe(migrations.length);
});

test('opening again keeps what is there', async () => {
	const store = await freshStore();
	await append(store, attempt());
	const before = await everything(store);
	store.db.close();
	const db = await openDatabase(store.db.name, () => {});
	expect(await everything({ ...store, db })).toEqual(before);
	db.close();
});

describe('another version', () => {
	test('that is newer is left to open, and this tab says so', async () => {
		const troubles: Trouble[] = [];
		const store = await freshStore({ troubles });
		const event = attempt();
		const saving = append(store, event);
		const newer = await openDB(store.db.name, migrations.length + 1);
		await saving;
		expect(troubles).toEqual(['outdated']);
		expect(await newer.getAll('events')).toEqual([event]);
		newer.close();
		const error = await append(store, attempt()).catch((error: unknown) => error);
		expect(troubleOf(error)).toBe('closed');
	});

	test('that was opened here before is not touched', async () => {
		const name = freshName();
		onTestFinished(() => deleteDB(name));
		const newer = await openDB(name, migrations.length + 1);
		newer.close();
		const error = await openDatabase(name, () => {}).catch((error: unknown) => error);
		expect(troubleOf(error)).toBe('outdated');
	});

	test('that is older and does not close holds this one up until it does', async () => {
		const name = freshName();
		onTestFinished(() => deleteDB(name));
		const request = indexedDB.open(name, 1);
		const older = await new Promise<IDBDatabase>((resolve) => {
			request.onsuccess = () => resolve(request.result);
		});
		const troubles: Trouble[] = [];
		const opening = openNext(name, troubles);
		await vi.waitFor(() => expect(troubles).toEqual(['blocked']));
		older.close();
		(await opening).close();
	});
});

/** Opens as the app will once it has one more version. */
async function openNext(name: string, troubles: Trouble[], migration: Migration = () => {}) {
	const next = migrations as unknown as Migration[];
	next.push(migration);
	try {
		return await openDatabase(name, (trouble) => troubles.push(trouble));
	} finally {
		next.pop();
	}
}

test('a migration that fails leaves the old version as it was', async () => {
	const store = await freshStore();
	await append(store, attempt());
	const before = await everything(store);
	store.close();
	const failing = openNext(store.db.name, [], (db, tx) => {
		db.deleteObjectStore('learners');
		tx.abort();
	});
	await expect(failing).rejects.toThrow(DOMException);
	const db = await openDatabase(store.db.name, () => {});
	expect(await everything({ ...store, db })).toEqual(before);
	db.close();
});
