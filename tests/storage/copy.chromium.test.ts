import { deleteDB } from 'idb';
import { afterEach, describe, expect, onTestFinished, test, vi } from 'vitest';
import { openCopy } from '../../src/lib/storage/copy.ts';
import type { Database } from '../../src/lib/storage/database.ts';
import { foldState } from '../../src/lib/storage/fold.ts';
import { addLearner, listLearners, removeLearner } from '../../src/lib/storage/learners.ts';
import { append, merge } from '../../src/lib/storage/log.ts';
import type { Store } from '../../src/lib/storage/store.ts';
import { attempt } from './event-arbitrary.ts';
import {
	allEvents,
	copied,
	deleteCopy,
	freshName,
	freshStore,
	openAgain,
	trail,
	wipe
} from './fresh-store.ts';

afterEach(() => vi.unstubAllGlobals());

/** A store with two named learners, and something in the log of each. */
async function lived(name = freshName()): Promise<Store> {
	const store = await freshStore({ name, learners: [] });
	for (const nickname of ['Sam', 'Kit']) {
		const added = await addLearner(store, nickname);
		if (!added.ok) throw new Error(added.sentence);
		const learner = added.learner.id;
		await merge(store, [attempt({ learner }), attempt({ learner })]);
	}
	return store;
}

/** The store after the browser threw its files away and was started again. */
async function lost(store: Store): Promise<Store> {
	store.close();
	await deleteDB(store.db.name);
	return openAgain({ name: store.db.name });
}

const names = async (store: Store) =>
	(await listLearners(store)).map(({ nickname }) => nickname).sort();

describe('a store that the browser has lost', () => {
	test('is filled again: learners, events and what they come to', async () => {
		const store = await lived();
		const events = await allEvents(store);
		const [learner] = await listLearners(store);
		const trailBefore = await foldState(store, trail, learner?.id ?? '');
		const again = await lost(store);
		expect(await allEvents(again)).toEqual(events);
		expect(await names(again)).toEqual(['Kit', 'Sam']);
		expect(await foldState(again, trail, learner?.id ?? '')).toEqual(trailBefore);
		// No backup is known of any more, so the reminder counts all of them.
		expect((await listLearners(again)).map(({ unsaved }) => unsaved)).toEqual([3, 3]);
		again.close();
	});

	test('is filled once by two tabs at a time, and can be lost again', async () => {
		const store = await lived();
		const events = await allEvents(store);
		store.close();
		await deleteDB(store.db.name);
		const tabs = await Promise.all([1, 2].map(() => openAgain({ name: store.db.name })));
		for (const tab of tabs) expect(await allEvents(tab)).toEqual(events);
		for (const tab of tabs) tab.close();
		const again = await lost(store);
		expect(await allEvents(again)).toEqual(events);
		again.close();
	});

	test('tells how far it is, where there is much to put back', async () => {
		const store = await lived();
		const [learner] = await listLearners(store);
		const many = Array.from({ length: 2500 }, () => attempt({ learner: learner?.id ?? '' }));
		await merge(store, many);
		store.close();
		await deleteDB(store.db.name);
		const heard: (readonly [number, number])[] = [];
		const again = await openAgain({
			name: store.db.name,
			onRecovered: (done, all) => heard.push([done, all])
		});
		expect(heard).toEqual([
			[1000, 2506],
			[2000, 2506],
			[2506, 2506]
		]);
		again.close();
	});

	test('stays without a learner who was removed', async () => {
		const store = await lived();
		for (const { id, nickname } of await listLearners(store))
			if (nickname === 'Sam') await removeLearner(store, id);
		const again = await lost(store);
		expect(await names(again)).toEqual(['Kit']);
		for (const { id } of await listLearners(again)) await removeLearner(again, id);
		const empty = await lost(again);
		expect(await names(empty)).toEqual([]);
		expect(await copied(empty)).toEqual([]);
		empty.close();
	});
});

describe('the copy', () => {
	test('is filled again after it was lost, with the next event', async () => {
		const store = await lived();
		store.close();
		await deleteCopy(store);
		const again = await openAgain({ name: store.db.name });
		const [learner] = await listLearners(again);
		await append(again, attempt({ learner: learner?.id ?? '' }));
		await (await again.copy)?.catchUp();
		expect(await copied(again)).toEqual(await allEvents(again));
		expect(await copied(again)).toHaveLength(7);
		again.close();
	});

	test('holds nothing of a learner whom another tab removes during a write', async () => {
		const store = await lived();
		const [learner] = await listLearners(store);
		const id = learner?.id ?? '';
		const copy = await store.copy;
		if (!copy) throw new Error('no copy');
		const add = vi.spyOn(copy, 'add').mockImplementation(async (events) => {
			add.mockRestore();
			const other = await openAgain({ name: store.db.name });
			await removeLearner(other, id);
			other.close();
			await copy.add(events);
		});
		await append(store, attempt({ learner: id }));
		expect(await copied(store)).toEqual(await allEvents(store));
		expect(await copied(store)).toHaveLength(3);
	});

	test('may fail: the event is in the log all the same', async () => {
		const store = await lived();
		(await store.copy)?.close();
		const [learner] = await listLearners(store);
		await append(store, attempt({ learner: learner?.id ?? '' }));
		expect(await allEvents(store)).toHaveLength(7);
	});

	test('is given up where the browser does not answer', async () => {
		vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
		onTestFinished(() => void vi.useRealTimers());
		vi.stubGlobal('navigator', { storageBuckets: { open: () => new Promise(() => {}) } });
		const copy = openCopy({} as Database);
		await vi.advanceTimersByTimeAsync(5000);
		expect(await copy).toBe(null);
	});

	test('is done without where the browser has no buckets', async () => {
		vi.stubGlobal('navigator', {});
		const store = await lived();
		expect(await store.copy).toBe(null);
		expect(await allEvents(store)).toHaveLength(6);
		for (const { id } of await listLearners(store)) await removeLearner(store, id);
		expect(await names(store)).toEqual([]);
		vi.unstubAllGlobals();
		await wipe(store);
	});
});
