import fc from 'fast-check';
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import { backupOf, noteBackup, restore } from '../../src/lib/storage/backup.ts';
import { type Backup, readBackup } from '../../src/lib/storage/backup-file.ts';
import { foldState } from '../../src/lib/storage/fold.ts';
import { listLearners, removeLearner } from '../../src/lib/storage/learners.ts';
import { append, merge } from '../../src/lib/storage/log.ts';
import type { Store } from '../../src/lib/storage/store.ts';
import { attempt, events, kit, sam } from './event-arbitrary.ts';
import { allEvents, everything, freshStore, tally, trail, wipe } from './fresh-store.ts';

const made = '2026-03-09T10:00:00.000Z';
const otherSam = '5a000000-0000-4000-8000-000000000003';

/** A backup as it comes out of its file. */
async function throughFile(store: Store, ids = [sam, kit]): Promise<Backup> {
	const written = await backupOf(store, ids, made);
	if (!written.ok) throw new Error(written.sentence);
	const reading = readBackup(written.text);
	if (!reading.ok) throw new Error(reading.sentence);
	return reading.backup;
}

const states = (store: Store) =>
	Promise.all(
		[sam, kit].flatMap((id) => [foldState(store, trail, id), foldState(store, tally, id)])
	);

/** The states as the log alone gives them. */
async function rebuilt(store: Store) {
	await store.db.clear('folds');
	return states(store);
}

describe('backup, wipe, restore', () => {
	test('gives back every event, learner and state', async () => {
		await fc.assert(
			fc.asyncProperty(events(fc.constantFrom(sam, kit)), async (list) => {
				const store = await freshStore();
				await merge(store, list);
				const before = { events: await allEvents(store), states: await states(store) };
				const names = (await listLearners(store)).map(({ id, nickname }) => [id, nickname]);
				const backup = await throughFile(store);
				await wipe(store);

				const next = await freshStore({ learners: [] });
				expect(await restore(next, backup)).toEqual({
					learnersNew: 2,
					eventsNew: list.length,
					eventsKnown: 0
				});
				expect({ events: await allEvents(next), states: await states(next) }).toEqual(before);
				const back = (await listLearners(next)).map(({ id, nickname }) => [id, nickname]);
				expect(back.sort()).toEqual(names.sort());

				const once = await everything(next);
				expect(await restore(next, backup)).toEqual({
					learnersNew: 0,
					eventsNew: 0,
					eventsKnown: list.length
				});
				expect(await everything(next)).toEqual(once);
				await wipe(next);
			}),
			{ numRuns: 60 }
		);
	});

	test('of one learner holds that learner only', async () => {
		const store = await freshStore();
		await merge(store, [attempt(), attempt({ learner: kit })]);
		const { learners } = await throughFile(store, [kit, otherSam]);
		expect(learners.map(({ id, events }) => [id, events.length])).toEqual([[kit, 1]]);
	});

	test('leaves out an event that was damaged in the store, and keeps the rest', async () => {
		const store = await freshStore();
		await merge(store, [attempt(), attempt()]);
		await store.db.put('events', { ...attempt(), skills: 'none' });
		const { learners } = await throughFile(store, [sam]);
		expect(learners[0]?.events.length).toBe(2);
	});

	test('is refused when the file would be too large to restore', async () => {
		const store = await freshStore();
		const size = vi.spyOn(Blob.prototype, 'size', 'get').mockReturnValue(64 * 2 ** 20 + 1);
		onTestFinished(() => size.mockRestore());
		expect(await backupOf(store, [sam], made)).toEqual({
			ok: false,
			sentence: 'That is too much for one file; back up fewer learners at a time.'
		});
	});
});

describe('restoring beside what is here', () => {
	test('adds what is new and says how much', async () => {
		const store = await freshStore();
		const shared = attempt();
		await merge(store, [shared, attempt()]);
		const backup: Backup = {
			made,
			learners: [{ id: sam, nickname: 'Sam', events: [shared, attempt(), attempt()] }]
		};
		expect(await restore(store, backup)).toEqual({
			learnersNew: 0,
			eventsNew: 2,
			eventsKnown: 1
		});
		expect((await allEvents(store)).length).toBe(4);
		expect(await foldState(store, tally, sam)).toEqual({ attempt: 4 });
	});

	test('keeps two learners of the same nickname apart', async () => {
		const store = await freshStore();
		const backup = (id: string): Backup => ({
			made,
			learners: [{ id, nickname: 'SAM', events: [attempt({ learner: id })] }]
		});
		await restore(store, backup(otherSam));
		await restore(store, backup('5a000000-0000-4000-8000-000000000004'));
		await restore(store, backup(otherSam));
		const names = (await listLearners(store)).map(({ nickname }) => nickname).sort();
		expect(names).toEqual(['Kit', 'SAM 2', 'SAM 3', 'Sam']);
	});

	test('keeps the nickname that the other device showed', async () => {
		const store = await freshStore({ learners: [] });
		const naming = { ...attempt(), type: 'learner', nickname: 'Sam' };
		await restore(store, { made, learners: [{ id: sam, nickname: 'Sam 2', events: [naming] }] });
		expect((await listLearners(store))[0]?.nickname).toBe('Sam 2');
	});

	test('brings back a learner who was removed', async () => {
		const store = await freshStore();
		await merge(store, [attempt(), attempt({ learner: kit })]);
		const before = await allEvents(store);
		const backup = await throughFile(store);
		await removeLearner(store, sam);
		expect(await restore(store, backup)).toEqual({ learnersNew: 1, eventsNew: 1, eventsKnown: 1 });
		expect(await allEvents(store)).toEqual(before);
	});

	test('that fails half way keeps what is in whole, and restoring again adds the rest', async () => {
		const store = await freshStore();
		await append(store, attempt());
		await states(store);
		const add = IDBObjectStore.prototype.add;
		let calls = 0;
		const spy = vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (
			this: IDBObjectStore,
			...args
		) {
			calls++;
			if (calls === 5) throw new Error('half way');
			return add.apply(this, args);
		});
		onTestFinished(() => spy.mockRestore());
		const backup: Backup = {
			made,
			learners: [
				{ id: sam, nickname: 'Sam', events: [attempt(), attempt()] },
				{
					id: otherSam,
					nickname: 'Sam',
					events: [attempt({ learner: otherSam }), attempt({ learner: otherSam })]
				}
			]
		};
		await expect(restore(store, backup)).rejects.toThrow('half way');
		spy.mockRestore();
		expect(calls).toBe(5);
		expect(await store.db.count('events')).toBe(3);
		expect(await store.db.getKey('learners', otherSam)).toBeUndefined();
		expect(await states(store)).toEqual(await rebuilt(store));
		expect(await restore(store, backup)).toEqual({
			learnersNew: 1,
			eventsNew: 2,
			eventsKnown: 2
		});
	});

	test('tells how far it is, can be called off, and goes on from there', async () => {
		const store = await freshStore();
		await states(store);
		const list = Array.from({ length: 2500 }, () => attempt());
		const backup: Backup = { made, learners: [{ id: sam, nickname: 'Sam', events: list }] };
		const off = new AbortController();
		const told: number[][] = [];
		const first = await restore(store, backup, {
			signal: off.signal,
			onProgress(...progress) {
				told.push(progress);
				off.abort();
			}
		});
		expect(first).toEqual({ learnersNew: 0, eventsNew: 1000, eventsKnown: 0, left: 1500 });
		expect(told).toEqual([[1000, 2500]]);
		expect(await store.db.count('events')).toBe(1000);
		expect(await store.db.get('learners', sam)).toMatchObject({ unsaved: 0 });
		expect(await states(store)).toEqual(await rebuilt(store));
		expect(await restore(store, backup)).toEqual({
			learnersNew: 0,
			eventsNew: 1500,
			eventsKnown: 1000
		});
		expect(await store.db.count('events')).toBe(2500);
		expect(await states(store)).toEqual(await rebuilt(store));
	});
});

describe('what is in no backup yet', () => {
	const unsaved = async (store: Store) =>
		(await listLearners(store)).find(({ id }) => id === sam)?.unsaved;

	test('grows with each event, and starts again when a backup was made', async () => {
		const store = await freshStore();
		await merge(store, [attempt(), attempt(), attempt({ learner: kit })]);
		expect(await unsaved(store)).toBe(2);
		await noteBackup(store, [sam, otherSam], 77);
		expect(await store.db.get('learners', sam)).toMatchObject({ unsaved: 0, backedUp: 77 });
		expect(await store.db.get('learners', kit)).toMatchObject({ unsaved: 1, backedUp: null });
		expect(await store.db.get('learners', otherSam)).toBeUndefined();
		await append(store, attempt());
		expect(await unsaved(store)).toBe(1);
	});

	test('does not grow by what was restored from a file', async () => {
		const store = await freshStore();
		await append(store, attempt());
		await restore(store, {
			made,
			learners: [
				{ id: sam, nickname: 'Sam', events: [attempt(), attempt()] },
				{ id: otherSam, nickname: 'Lee', events: [attempt({ learner: otherSam })] }
			]
		});
		expect(await unsaved(store)).toBe(1);
		expect(await store.db.get('learners', otherSam)).toMatchObject({
			unsaved: 0,
			backedUp: Date.parse(made)
		});
	});
});
