import type { LogEvent } from '$lib/engine/schedule/event.ts';
import type { LogCopy } from './copy.ts';
import { type Database, newLearner, write } from './database.ts';
import { addMissingEvents, byLearner, noteOnLearner } from './log.ts';
import { freeNickname } from './nickname.ts';
import { portionsOf } from './pages.ts';

/** Hears after each portion how many of the events are back. */
export type OnRecovered = (done: number, all: number) => void;

/**
 * Fills an empty store from the copy of its log: either the browser has lost the store, or it is
 * new and so is the copy. What is not in the log, as the day of the last backup, starts anew.
 */
export async function recoverLog(
	db: Database,
	copy: LogCopy,
	onRecovered: OnRecovered = () => {}
): Promise<void> {
	const events = await copy.all();
	if (events.length === 0) return;
	// The learners come last: whoever is closed before that starts again, and skips what is in.
	let done = 0;
	for (const portion of portionsOf(events)) {
		const go = await write(db, async (tx) => {
			if ((await tx.objectStore('learners').count()) > 0) return false;
			await addMissingEvents(tx, portion);
			return true;
		});
		if (!go) return;
		done += portion.length;
		onRecovered(done, events.length);
	}
	await write(db, async (tx) => {
		const table = tx.objectStore('learners');
		// Another tab may have done it already.
		if ((await table.count()) > 0) return;
		const names: string[] = [];
		for (const [id, own] of byLearner(events)) {
			// The log names the learner in a moment.
			const nickname = freeNickname('Learner 1', names);
			names.push(nickname);
			await table.add(newLearner({ id, nickname, ...times(own) }));
		}
		for (const [id, own] of byLearner(events)) await noteOnLearner(tx, id, own);
	});
}

function times(events: readonly LogEvent[]): { created: number; used: number } {
	return { created: events[0]?.at ?? 0, used: events.at(-1)?.at ?? 0 };
}
