import { backupOf, noteBackup, type Restored, restore, type Watch } from '$lib/storage/backup.ts';
import { type Backup, readBackupFile } from '$lib/storage/backup-file.ts';
import { localDay } from '$lib/storage/local-day.ts';
import type { Store } from '$lib/storage/store.ts';
import { download } from '$lib/ui/download.ts';
import { counted } from '$lib/ui/counted.ts';
import type { FileContent } from '$lib/ui/learners/file-content.ts';

/** A backup that was read from a file and is not on this device yet. */
export interface Chosen {
	readonly content: FileContent;
	/** Adds it all until it is called off, and says in one sentence what was new. */
	merge(store: Store, watch: Watch): Promise<string>;
}

export type Choosing =
	| { readonly ok: true; readonly chosen: Chosen }
	| { readonly ok: false; readonly sentence: string };

/** Name of a backup file; `nickname` is null for all learners of the device. */
export function backupName(nickname: string | null, day: string): string {
	const plain = (nickname ?? 'everyone').toLowerCase().replace(/[^\p{L}\p{M}\p{N}]+/gu, '-');
	return `bucktail-${plain.replace(/^-|-$/g, '') || 'learner'}-${day}.json`;
}

/** Hands the person a file with these learners, and says in one sentence how that went. */
export async function saveBackup(
	store: Store,
	learners: readonly { readonly id: string; readonly nickname: string }[],
	now: Date
): Promise<{ readonly ok: boolean; readonly sentence: string }> {
	const ids = learners.map(({ id }) => id);
	const written = await backupOf(store, ids, now.toISOString());
	if (!written.ok) return written;
	const [only] = learners;
	const nickname = only && learners.length === 1 ? only.nickname : null;
	const name = backupName(nickname, localDay(now));
	download(name, 'application/json', written.text);
	await noteBackup(store, ids, now.getTime());
	return { ok: true, sentence: `The backup is in your downloads: ${name}.` };
}

/** Reads a file that somebody chose; nothing on the device changes. */
export async function chooseBackup(file: Blob): Promise<Choosing> {
	const reading = await readBackupFile(file);
	if (!reading.ok) return reading;
	const { backup } = reading;
	return {
		ok: true,
		chosen: {
			content: contentOf(backup),
			merge: async (store, watch) => restoredWords(await restore(store, backup, watch))
		}
	};
}

function contentOf({ made, learners }: Backup): FileContent {
	return {
		made: new Date(made).toLocaleString('en-GB', { dateStyle: 'long', timeStyle: 'short' }),
		learners: learners.map(({ id, nickname, events }) => ({
			id,
			nickname,
			records: events.length
		}))
	};
}

/** What a restore did, in words. */
export function restoredWords({ learnersNew, eventsNew, eventsKnown, left }: Restored): string {
	if (left !== undefined) {
		return 'Stopped: what was added stays, and restoring the file again goes on from there.';
	}
	const added = learnersNew === 0 ? '' : ` ${were(learnersNew, 'learner')} added.`;
	if (eventsNew === 0) {
		return `Nothing was new: ${were(eventsKnown, 'record')} here already.${added}`;
	}
	const known = eventsKnown === 0 ? '' : `, ${were(eventsKnown, 'record')} here already`;
	return `${were(eventsNew, 'record')} new${known}.${added}`;
}

function were(count: number, what: string): string {
	return counted(count, `${what} was`, `${what}s were`);
}
