import { type IDBPDatabase, unwrap, wrap } from 'idb';
import type { LogEvent } from '$lib/engine/schedule/event.ts';
import { allOf, type Database, type Tables } from './database.ts';
import { pagesOf } from './pages.ts';

/*
 * A second copy of the log, in a storage bucket: there the browser keeps it in other files.
 *
 * Browsers built on Chromium append to one file per site. Killed in the middle of a write, they
 * append behind the torn piece the next time, find the file damaged the time after that, and start
 * an empty one without a word. A kill tears one of the two files, and each is filled again from the
 * other. A browser without storage buckets has no copy.
 */

type Copied = IDBPDatabase<Pick<Tables, 'events'>>;

export interface LogCopy {
	/** Adds events; the first time, what else the log has more than the copy follows. */
	add(events: readonly LogEvent[]): Promise<void>;
	/** Removes all of a learner's events. */
	remove(learner: string): Promise<void>;
	/** Every event, in the order of the log. */
	all(): Promise<LogEvent[]>;
	/** Makes it hold what the log holds, where it was lost or left behind; once in its life. */
	catchUp(): Promise<void>;
	close(): void;
}

/** Not in TypeScript's library yet: https://wicg.github.io/storage-buckets/ */
interface Bucket {
	readonly indexedDB: IDBFactory;
}

const bucketName = 'bucktail-copy';

/** Without a reference to it, the bucket is collected as garbage and its databases stand still. */
const held = new Set<Bucket>();

/** Longest wait for one answer of the copy, in milliseconds: work goes on without it. */
const patience = 5000;

/** The copy of a log; null where the browser has no buckets or refuses one. */
export async function openCopy(log: Database): Promise<LogCopy | null> {
	const { storageBuckets } = navigator as {
		storageBuckets?: { open(name: string): Promise<Bucket> };
	};
	if (!storageBuckets) return null;
	try {
		const bucket = await inTime(storageBuckets.open(bucketName));
		held.add(bucket);
		const opening = bucket.indexedDB.open(log.name, 1);
		opening.onupgradeneeded = () =>
			opening.result.createObjectStore('events', { keyPath: ['learner', 'at', 'id'] });
		return copyIn((await inTime(wrap(opening))) as unknown as Copied, log);
	} catch {
		return null;
	}
}

function copyIn(db: Copied, log: Database): LogCopy {
	let catchingUp: Promise<void> | null = null;
	const catchUp = () => (catchingUp ??= bringUp(db, log));
	return {
		async add(events) {
			await put(db, events);
			// A browser that is closed meanwhile leaves the rest for the next time.
			catchUp().catch(() => {});
		},
		remove: (learner) => inTime(db.delete('events', allOf(learner))),
		all: () => db.getAll('events'),
		catchUp,
		close: () => db.close()
	};
}

/** Events put into the copy in one transaction: nothing waits for it, and more would hold a page up. */
const partLength = 25;

async function put(db: Copied, events: readonly LogEvent[]): Promise<void> {
	for (let from = 0; from < events.length; from += partLength) {
		const tx = db.transaction('events', 'readwrite');
		const part = events.slice(from, from + partLength);
		const table = unwrap(tx.store);
		for (const event of part) table.put(event);
		await inTime(tx.done);
	}
}

async function bringUp(db: Copied, log: Database): Promise<void> {
	for (const id of await log.getAllKeys('learners')) {
		const range = allOf(id);
		if ((await log.count('events', range)) === (await db.count('events', range))) continue;
		const table = () => log.transaction('events').store;
		for await (const page of pagesOf(table, id)) await put(db, page);
	}
}

async function inTime<T>(work: Promise<T>): Promise<T> {
	let timer: ReturnType<typeof setTimeout> | undefined;
	const late = new Promise<never>((_, reject) => {
		timer = setTimeout(() => reject(new Error('the copy of the log does not answer')), patience);
	});
	return Promise.race([work, late]).finally(() => clearTimeout(timer));
}
