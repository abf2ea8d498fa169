import { allOf, type Learner, newLearner, write, type Writing } from './database.ts';
import { type Add, writeEvents } from './log.ts';
import { newId } from './new-id.ts';
import { readNickname } from './nickname.ts';
import { stamped } from './stamp.ts';
import type { Store } from './store.ts';
import { LearnerRemoved } from './trouble.ts';

export type { Learner } from './database.ts';

interface Added {
	readonly ok: true;
	readonly learner: Learner;
}

export type LearnerChange = Added | { readonly ok: false; readonly sentence: string };

/** The learners on this device, the one last at work first. */
export async function listLearners(store: Store): Promise<Learner[]> {
	const all = await store.db.getAll('learners');
	return all.sort((a, b) => b.used - a.used || b.created - a.created);
}

/** Adds a learner, or says in one sentence why not. */
export async function addLearner(store: Store, typed: string): Promise<LearnerChange> {
	return tell(
		store,
		await writeEvents(store, async (tx, add) => {
			const reading = readNickname(typed, await nicknames(tx));
			return reading.ok ? addNamed(tx, add, reading.nickname) : reading;
		})
	);
}

/** The learner of a device that has none yet, or the one that another tab has just added. */
export async function firstLearner(store: Store, nickname: string): Promise<Learner> {
	const learner = await writeEvents(store, async (tx, add) => {
		const [there] = await tx.objectStore('learners').getAll();
		return there ?? (await addNamed(tx, add, nickname)).learner;
	});
	store.changed([learner.id]);
	return learner;
}

async function addNamed(tx: Writing, add: Add, nickname: string): Promise<Added> {
	const id = newId();
	const now = Date.now();
	await tx.objectStore('learners').add(newLearner({ id, nickname, created: now, used: now }));
	return giveName(tx, add, id, nickname);
}

/** Gives a learner another nickname, or says in one sentence why not. */
export async function renameLearner(
	store: Store,
	id: string,
	typed: string
): Promise<LearnerChange> {
	return tell(
		store,
		await writeEvents(store, async (tx, add) => {
			const reading = readNickname(typed, await nicknames(tx, id));
			return reading.ok ? giveName(tx, add, id, reading.nickname) : reading;
		})
	);
}

/** Notes that a learner is at work here now. */
export async function useLearner(store: Store, id: string): Promise<void> {
	await write(store.db, async (tx) => {
		const learner = await learnerIn(tx, id);
		await tx.objectStore('learners').put({ ...learner, used: Date.now() });
	});
}

/** Removes a learner and every trace: events, caches and what the pages kept. */
export async function removeLearner(store: Store, id: string): Promise<void> {
	for (const area of [localStorage, sessionStorage]) forgetKeys(area, id);
	// From the copy first, or an empty log would be filled from what it still holds; and again last,
	// for what another tab has added meanwhile.
	const copy = await store.copy;
	await copy?.remove(id);
	await write(store.db, async (tx) => {
		await tx.objectStore('events').delete(allOf(id));
		await tx.objectStore('folds').delete(allOf(id));
		await tx.objectStore('learners').delete(id);
	});
	await copy?.remove(id);
	store.changed([id]);
}

/**
 * Removes what the pages kept for a learner: keys of ours that carry the id, or whose value does.
 * What was begun before there was a learner may be this one's, and goes too.
 */
function forgetKeys(area: Storage, id: string): void {
	for (const key of Object.keys(area)) {
		const first = key.endsWith('.first');
		if (key.startsWith('bucktail.') && (first || (key + area.getItem(key)).includes(id))) {
			area.removeItem(key);
		}
	}
}

async function nicknames(tx: Writing, except?: string): Promise<string[]> {
	const all = await tx.objectStore('learners').getAll();
	return all.filter(({ id }) => id !== except).map(({ nickname }) => nickname);
}

async function giveName(tx: Writing, add: Add, id: string, nickname: string): Promise<Added> {
	const { named } = await learnerIn(tx, id);
	// Newer than the last naming even where the clock was set back, or the old name would stay.
	const at = new Date(Math.max(Date.now(), named.at + 1));
	await add([stamped(id, { type: 'learner', nickname }, at)]);
	return { ok: true, learner: await learnerIn(tx, id) };
}

async function learnerIn(tx: Writing, id: string): Promise<Learner> {
	const learner = await tx.objectStore('learners').get(id);
	if (!learner) throw new LearnerRemoved();
	return learner;
}

function tell(store: Store, change: LearnerChange): LearnerChange {
	if (change.ok) store.changed([change.learner.id]);
	return change;
}
