/** Whether the browser keeps what is stored until the person removes it. */
export type Persistence = 'granted' | 'refused' | 'unknown';

/** Asks the browser to keep what is stored; some browsers then ask the person. */
export function askToPersist(): Promise<Persistence> {
	return answerOf(() => navigator.storage.persist());
}

/** Whether the browser keeps what is stored, without asking for it. */
export function persistence(): Promise<Persistence> {
	return answerOf(() => navigator.storage.persisted());
}

async function answerOf(ask: () => Promise<boolean>): Promise<Persistence> {
	try {
		return (await ask()) ? 'granted' : 'refused';
	} catch {
		return 'unknown';
	}
}

export const persistenceSentences: Readonly<Record<Persistence, string>> = {
	granted: 'This browser keeps your work until you remove it yourself.',
	refused: 'This browser may clear your work when the device runs short of room: keep a backup.',
	unknown: 'This browser does not say whether it keeps your work: keep a backup.'
};

/** Bytes in use and bytes allowed, or null when the browser does not say. */
export async function roomLeft(): Promise<{ used: number; allowed: number } | null> {
	try {
		const { usage, quota } = await navigator.storage.estimate();
		return usage === undefined || quota === undefined ? null : { used: usage, allowed: quota };
	} catch {
		return null;
	}
}

// One browser engine clears a site's store after 7 days of use elsewhere, so the first reminder
// must come well before; a kept store can still be lost with the device.
const limits = {
	granted: { days: 30, events: 500 },
	refused: { days: 5, events: 50 },
	unknown: { days: 5, events: 50 }
};

/**
 * Whether to remind of a backup. Days and events count since the last backup, or since the learner
 * was added when there is none.
 */
export function backupDue(kept: Persistence, events: number, days: number): boolean {
	return events > 0 && (days >= limits[kept].days || events >= limits[kept].events);
}
