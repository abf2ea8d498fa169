import type { LogEvent } from '$lib/engine/schedule/event.ts';
import type { LogCopy } from './copy.ts';
import { type Database, newLearner, write } from './database.ts';
import type { Fold } from './fold.ts';
import { addEvents, byLearner } from './log.ts';
import { freeNickname } from './nickname.ts';

/**
 * Fills an empty store from the copy of its log: either the browser has lost the store, or it is
 * new and so is the copy. What is not in the log, as the day of the last backup, starts anew.
 */
export async function recoverLog(
	store: { readonly db: Database; readonly folds: readonly Fold<unknown>[] },
	copy: LogCopy
): Promise<void> {
	const events = await copy.all();
	if (events.length === 0) return;
	await write(store.db, async (tx) => {
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
		await addEvents(tx, store, events);
	});
}

function times(events: readonly LogEvent[]): { created: number; used: number } {
	return { created: events[0]?.at ?? 0, used: events.at(-1)?.at ?? 0 };
}
