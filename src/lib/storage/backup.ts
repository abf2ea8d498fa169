import { compareEvents, type LogEvent, readEvent } from '$lib/engine/schedule/event.ts';
import {
	type BackedUpLearner,
	type Backup,
	maxBackupBytes,
	maxLearners,
	sizeOf,
	writeBackup
} from './backup-file.ts';
import { write, type Writing } from './database.ts';
import { addEvents, copyEvents } from './log.ts';
import { freeNickname } from './nickname.ts';
import { type EventTable, pagesOf, portionsOf } from './pages.ts';
import type { Store } from './store.ts';

export type BackupText =
	| { readonly ok: true; readonly text: string }
	| { readonly ok: false; readonly sentence: string };

/**
 * The text of a backup of these learners. Those no longer here are left out.
 *
 * @param made date and time by ISO 8601
 */
export async function backupOf(
	store: Store,
	ids: readonly string[],
	made: string
): Promise<BackupText> {
	const tx = store.db.transaction(['learners', 'events']);
	const learners: BackedUpLearner[] = [];
	for (const id of ids) {
		const learner = await tx.objectStore('learners').get(id);
		if (!learner) continue;
		const events = await readableEvents(tx.objectStore('events'), id);
		learners.push({ id, nickname: learner.nickname, events });
	}
	const text = writeBackup({ made, learners });
	if (learners.length <= maxLearners && sizeOf(text) <= maxBackupBytes) return { ok: true, text };
	return {
		ok: false,
		sentence: 'That is too much for one file; back up fewer learners at a time.'
	};
}

// One unreadable event would make the whole file refused.
async function readableEvents(table: EventTable, learner: string): Promise<LogEvent[]> {
	const events: LogEvent[] = [];
	for await (const page of pagesOf(table, learner)) {
		events.push(...page.filter((event) => readEvent(event).ok));
	}
	return events;
}

/** Notes that the backup of these learners was handed to the person. */
export async function noteBackup(store: Store, ids: readonly string[], at: number): Promise<void> {
	await write(store.db, async (tx) => {
		const table = tx.objectStore('learners');
		for (const id of ids) {
			const learner = await table.get(id);
			if (learner) await table.put({ ...learner, unsaved: 0, backedUp: at });
		}
	});
}

/** What a restore did. */
export interface Restored {
	readonly learnersNew: number;
	readonly eventsNew: number;
	/** Events that were here already. */
	readonly eventsKnown: number;
	/** Events that are still to come, where it was called off. */
	readonly left?: number;
}

/** What a restore is told and tells meanwhile. */
export interface Watch {
	/** Aborted, it ends the restore before its next portion. */
	readonly signal?: AbortSignal;
	/** Hears after each portion how many of the backup's events are in. */
	readonly onProgress?: (done: number, all: number) => void;
}

/**
 * Adds what a backup holds to this device, a portion at a time; what is here stays. Each portion is
 * in whole or not at all. Where one fails, its error is thrown; restoring again adds the rest.
 */
export async function restore(
	store: Store,
	{ made, learners }: Backup,
	{ signal, onProgress }: Watch = {}
): Promise<Restored> {
	const all = learners.reduce((sum, { events }) => sum + events.length, 0);
	const fresh: LogEvent[] = [];
	let done = 0;
	let learnersNew = 0;
	const soFar = () => ({ learnersNew, eventsNew: fresh.length, eventsKnown: done - fresh.length });
	try {
		for (const learner of learners) {
			const sorted = [...learner.events].sort(compareEvents);
			for (const [index, portion] of portionsOf(sorted).entries()) {
				const left = all - done;
				if (signal?.aborted) return { ...soFar(), left };
				const { isNew, added } = await write(store.db, async (tx) => {
					// Later, a learner who is missing was removed in another tab.
					const isNew = index === 0 && (await addMissing(tx, learner, Date.parse(made)));
					const added = await addEvents(tx, store, portion);
					await noteSaved(tx, learner.id, added.length);
					return { isNew, added };
				});
				if (isNew) learnersNew++;
				fresh.push(...added);
				done += portion.length;
				onProgress?.(done, all);
			}
		}
	} finally {
		store.changed(learners.map(({ id }) => id));
		// Until the copy has them too they are in the file; waiting for it would take twice as long.
		void copyEvents(store, fresh);
	}
	return soFar();
}

/** @returns whether the learner was missing */
async function addMissing(
	tx: Writing,
	{ id, nickname, events }: BackedUpLearner,
	made: number
): Promise<boolean> {
	const table = tx.objectStore('learners');
	if (await table.getKey(id)) return false;
	const taken = (await table.getAll()).map((learner) => learner.nickname);
	// The name in the file's list stands, as that device showed it, until a newer naming comes.
	const naming = [...events].sort(compareEvents).findLast(({ type }) => type === 'learner');
	await table.add({
		id,
		nickname: freeNickname(nickname, taken),
		named: naming ? { at: naming.at, id: naming.id } : { at: 0, id: '' },
		created: made,
		used: 0,
		unsaved: 0,
		backedUp: made
	});
	return true;
}

// What came from a file is safe in that file.
async function noteSaved(tx: Writing, id: string, added: number): Promise<void> {
	const table = tx.objectStore('learners');
	const learner = await table.get(id);
	if (learner) await table.put({ ...learner, unsaved: learner.unsaved - added });
}
