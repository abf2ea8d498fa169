import fc from 'fast-check';
import { unwrap } from 'idb';
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import { compareEvents, type LogEvent } from '../../src/lib/engine/schedule/event.ts';
import { foldState } from '../../src/lib/storage/fold.ts';
import { append, count, events, merge } from '../../src/lib/storage/log.ts';
import type { Store } from '../../src/lib/storage/store.ts';
import { LearnerRemoved } from '../../src/lib/storage/trouble.ts';
import { attempt, events as someEvents, kit, sam } from './event-arbitrary.ts';
import { allEvents, collect, freshStore, openAgain, tally, trail, wipe } from './fresh-store.ts';

const stranger = '5a000000-0000-4000-8000-00000000000f';

describe('append', () => {
	test('has stored the event for every connection when it returns', async () => {
		const store = await freshStore();
		const event = attempt();
		await append(store, event);
		const other = await openAgain({ name: store.db.name });
		expect(await allEvents(other)).toEqual([event]);
		other.close();
	});

	test('asks for a strict transaction, then for the copy’s, and waits until both are complete', async () => {
		const store = await freshStore();
		const began: IDBTransaction[] = [];
		const completed: IDBTransaction[] = [];
		const begin = IDBDatabase.prototype.transaction;
		const spy = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
			this: IDBDatabase,
			...args
		) {
			const tx = begin.apply(this, args);
			if (tx.mode !== 'readwrite') return tx;
			tx.addEventListener('complete', () => completed.push(tx));
			began.push(tx);
			return tx;
		});
		onTestFinished(() => spy.mockRestore());
		await append(store, attempt());
		expect(completed).toEqual(began);
		const log = began.map(({ db, durability }) => [db === unwrap(store.db), durability]);
		expect(log).toEqual([
			[true, 'strict'],
			[false, 'default']
		]);
	});

	test('fails, and keeps nothing, when the transaction is aborted at its end', async () => {
		const store = await freshStore();
		await foldState(store, trail, sam);
		const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
			this: IDBObjectStore
		) {
			const request: IDBRequest = this.count();
			request.addEventListener('success', () => this.transaction.abort());
			return request;
		});
		onTestFinished(() => put.mockRestore());
		await expect(append(store, attempt())).rejects.toThrow(DOMException);
		put.mockRestore();
		expect(await allEvents(store)).toEqual([]);
		expect(await foldState(store, trail, sam)).toEqual([]);
	});

	test('of the same event again changes nothing', async () => {
		const store = await freshStore();
		const event = attempt();
		await append(store, event);
		await append(store, { ...event, seconds: 1 });
		expect(await allEvents(store)).toEqual([event]);
		expect((await store.db.get('learners', sam))?.unsaved).toBe(1);
	});

	test('of an id that is there keeps the first, whatever else was changed', async () => {
		const store = await freshStore();
		const event = attempt();
		await append(store, event);
		expect(
			await merge(store, [
				{ ...event, at: 7_000 },
				{ ...event, learner: kit }
			])
		).toBe(0);
		expect(await allEvents(store)).toEqual([event]);
	});

	test('of an event that could not be read back throws and stores nothing', async () => {
		const store = await freshStore();
		const broken = attempt({ seconds: NaN });
		await expect(append(store, broken)).rejects.toThrow(`unreadable event: attempt ${broken.id}`);
		expect(await allEvents(store)).toEqual([]);
	});

	test('for a learner who is not here is refused and stores nothing', async () => {
		const store = await freshStore();
		await expect(append(store, attempt({ learner: stranger }))).rejects.toThrow(LearnerRemoved);
		expect(await allEvents(store)).toEqual([]);
	});
});

describe('reading', () => {
	async function logged(list: readonly LogEvent[]): Promise<Store> {
		const store = await freshStore();
		await merge(store, list);
		return store;
	}

	test('goes through more than one page, both ways, in order', async () => {
		const list = Array.from({ length: 1_203 }, (_, i) => attempt({ at: Math.floor(i / 7) }));
		const store = await logged([...list].reverse());
		const inOrder = [...list].sort(compareEvents);
		expect(await collect(events(store, sam))).toEqual(inOrder);
		expect(await collect(events(store, sam, { newestFirst: true }))).toEqual(inOrder.toReversed());
		expect(await count(store, sam)).toBe(1_203);
		expect(await count(store, kit)).toBe(0);
	});

	test('stands other work between two events', async () => {
		const list = Array.from({ length: 1_001 }, () => attempt());
		const store = await logged(list);
		let seen = 0;
		for await (const event of events(store, sam)) {
			if (seen % 250 === 0) await new Promise((resolve) => setTimeout(resolve, 5));
			expect(event).toEqual(list[seen]);
			seen++;
		}
		expect(seen).toBe(1_001);
	});

	test('keeps to the times, the limit and the learner', async () => {
		const list = [1, 2, 2, 3, 4].map((at) => attempt({ at }));
		const store = await logged([...list, attempt({ at: 2, learner: kit })]);
		const read = async (span: Parameters<typeof events>[2]) =>
			(await collect(events(store, sam, span))).map((event) => list.findIndex(is(event)));
		expect(await read({ from: 2 })).toEqual([1, 2, 3, 4]);
		expect(await read({ to: 3 })).toEqual([0, 1, 2]);
		expect(await read({ from: 2, to: 3 })).toEqual([1, 2]);
		expect(await read({ from: 2, to: 3, newestFirst: true })).toEqual([2, 1]);
		expect(await read({ from: 3, to: 3 })).toEqual([]);
		expect(await read({ from: 9 })).toEqual([]);
		expect(await read({ limit: 2 })).toEqual([0, 1]);
		expect(await read({ limit: 2, newestFirst: true })).toEqual([4, 3]);
		expect(await read({ limit: 0 })).toEqual([]);
	});

	test('passes over types added later, and the limit does not count them', async () => {
		const later = { ...attempt(), type: 'added-later' };
		const list = [later, attempt(), attempt()];
		const store = await logged(list);
		expect(await collect(events(store, sam, { limit: 1 }))).toEqual([list[1]]);
		expect(await allEvents(store)).toContainEqual(later);
	});

	test('passes over what was damaged in the store', async () => {
		const store = await logged([attempt({ at: 1 }), attempt({ at: 3 })]);
		await store.db.put('events', { ...attempt({ at: 2 }), seconds: 'many' } as LogEvent);
		expect((await collect(events(store, sam))).map(({ at }) => at)).toEqual([1, 3]);
		expect(await foldState(store, tally, sam)).toEqual({ attempt: 2 });
	});
});

const is = (event: LogEvent) => (other: LogEvent) => other.id === event.id;

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** What a store holds that must not hang on how it came there. */
async function stateOf(store: Store) {
	const learners = await store.db.getAll('learners');
	const states = await Promise.all(
		[sam, kit].flatMap((id) => [foldState(store, trail, id), foldState(store, tally, id)])
	);
	return { events: await allEvents(store), states, learners };
}

describe('merging', () => {
	const pool = someEvents(fc.constantFrom(sam, kit)).chain((list) =>
		fc.record({
			// Logs of three devices that share some of their events.
			logs: fc.tuple(fc.subarray(list), fc.subarray(list), fc.subarray(list)),
			order: fc.constantFrom([0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]),
			cached: fc.boolean()
		})
	);

	test('of three logs in any order, in parts or at once, gives the same state', async () => {
		await fc.assert(
			fc.asyncProperty(pool, async ({ logs, order, cached }) => {
				const atOnce = await freshStore();
				const inParts = await freshStore();
				const byId = new Map(logs.flat().map((event) => [event.id, event]));
				expect(await merge(atOnce, logs.flat())).toBe(byId.size);
				for (const place of order) {
					await merge(inParts, logs[place] ?? []);
					if (cached) await stateOf(inParts);
				}
				expect(await stateOf(inParts)).toEqual(await stateOf(atOnce));
				expect(await allEvents(inParts)).toEqual(
					[...byId.values()].sort((a, b) => compare(a.learner, b.learner) || compareEvents(a, b))
				);
				await Promise.all([wipe(atOnce), wipe(inParts)]);
			}),
			{ numRuns: 60 }
		);
	});

	test('a second time changes nothing and finds nothing new', async () => {
		await fc.assert(
			fc.asyncProperty(pool, async ({ logs }) => {
				const store = await freshStore();
				for (const log of logs) await merge(store, log);
				const before = await stateOf(store);
				for (const log of logs) expect(await merge(store, log)).toBe(0);
				expect(await merge(store, logs.flat())).toBe(0);
				expect(await stateOf(store)).toEqual(before);
				await wipe(store);
			}),
			{ numRuns: 40 }
		);
	});

	test('is all or nothing', async () => {
		const store = await freshStore();
		const list = [attempt(), attempt({ learner: kit }), attempt({ learner: stranger })];
		await expect(merge(store, list)).rejects.toThrow(LearnerRemoved);
		await expect(merge(store, [attempt(), attempt({ seconds: -1 })])).rejects.toThrow('unreadable');
		expect(await allEvents(store)).toEqual([]);
	});
});

describe('two tabs', () => {
	test('that write at once lose nothing', async () => {
		const one = await freshStore();
		const two = await openAgain({ name: one.db.name });
		await foldState(one, trail, sam);
		const list = Array.from({ length: 200 }, () => attempt());
		await Promise.all(list.map((event, i) => append(i % 2 ? one : two, event)));
		expect((await allEvents(one)).length).toBe(200);
		const wanted = list.map((event) => `${event.at} ${event.id}`);
		expect(await foldState(one, trail, sam)).toEqual(wanted);
		expect(await foldState(two, trail, sam)).toEqual(wanted);
		expect((await one.db.get('learners', sam))?.unsaved).toBe(200);
		two.close();
	});

	test('hear of each other, and of nothing when nothing was new', async () => {
		const one = await freshStore();
		const two = await openAgain({ name: one.db.name });
		const heard: (readonly string[])[] = [];
		const stop = two.onChange((learners) => heard.push(learners));
		const own = vi.fn();
		one.onChange(own);
		const event = attempt();
		await merge(one, [event, attempt({ learner: kit })]);
		await merge(one, [event]);
		await append(one, attempt({ learner: kit }));
		await vi.waitFor(() => expect(heard).toEqual([[sam, kit], [kit]]));
		stop();
		await append(one, attempt());
		await new Promise((resolve) => setTimeout(resolve, 50));
		expect(heard.length).toBe(2);
		expect(own).not.toHaveBeenCalled();
		two.close();
	});
});
