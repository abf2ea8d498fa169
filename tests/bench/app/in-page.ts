import { learningFold } from '../../../src/lib/engine/schedule/learning.ts';
import { openDatabase } from '../../../src/lib/storage/database.ts';
import { foldOver } from '../../../src/lib/storage/fold.ts';
import { attemptAt, learner, type Sample } from './attempts.ts';

/*
 * What the bench runs inside the page, bundled into one script.
 */

/** Puts attempts into the store of the site as the log of a learner called Sam. */
export async function fill(samples: readonly Sample[], count: number): Promise<void> {
	const db = await openDatabase('bucktail', () => {});
	const now = Date.now();
	const batch = 5000;
	for (let from = 0; from < count; from += batch) {
		const tx = db.transaction(['events', 'learners'], 'readwrite');
		void tx.objectStore('learners').put({
			...{ id: learner, nickname: 'Sam', named: { at: 0, id: '' }, created: 0, used: now },
			...{ unsaved: 0, backedUp: now }
		});
		for (let n = from; n < Math.min(count, from + batch); n++)
			void tx.objectStore('events').put(attemptAt(samples, n, count, now));
		await tx.done;
	}
	db.close();
	localStorage.setItem('bucktail.learner', learner);
}

/** Milliseconds to fold a log of `count` attempts, read and checked as from the store. */
export function foldTime(samples: readonly Sample[], count: number): number {
	const log = Array.from({ length: count }, (_, n) => attemptAt(samples, n, count, Date.now()));
	const start = performance.now();
	foldOver(learningFold, log);
	return performance.now() - start;
}
