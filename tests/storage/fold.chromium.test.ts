import fc from 'fast-check';
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import { compareEvents, type LogEvent } from '../../src/lib/engine/schedule/event.ts';
import { type Fold, foldOver, foldState } from '../../src/lib/storage/fold.ts';
import { removeLearner } from '../../src/lib/storage/learners.ts';
import { append, merge } from '../../src/lib/storage/log.ts';
import type { Store } from '../../src/lib/storage/store.ts';
import { attempt, events, kit, sam } from './event-arbitrary.ts';
import { allEvents, freshStore, openAgain, tally, trail, wipe } from './fresh-store.ts';

const folds: readonly Fold<unknown>[] = [trail, tally];

/** What the folds give for a learner when they start from nothing. */
async function fresh(store: Store, learner: string): Promise<unknown[]> {
	const own = (await allEvents(store)).filter((event) => event.learner === learner);
	return folds.map((fold) => foldOver(fold, own.sort(compareEvents)));
}

function cached(store: Store, learner: string): Promise<unknown[]> {
	return Promise.all(folds.map((fold) => foldState(store, fold, learner)));
}

/** Something that happens to a store: events come, one learner's cache is asked for, one leaves. */
type Happening =
	| { readonly kind: 'append' | 'merge'; readonly events: readonly LogEvent[] }
	| { readonly kind: 'ask' | 'remove'; readonly learner: string };

const either = fc.constantFrom(sam, kit);
const happening: fc.Arbitrary<Happening> = fc.oneof(
	{
		weight: 4,
		arbitrary: fc.record({ kind: fc.constantFrom('append', 'merge'), events: events(either) })
	},
	{ weight: 4, arbitrary: fc.record({ kind: fc.constant('ask'), learner: either }) },
	{ weight: 1, arbitrary: fc.record({ kind: fc.constant('remove'), learner: either }) }
);

async function happen(store: Store, happening: Happening): Promise<void> {
	switch (happening.kind) {
		case 'append':
			for (const event of happening.events) await append(store, event).catch(() => {});
			return;
		case 'merge':
			await merge(store, happening.events).catch(() => {});
			return;
		case 'ask':
			await cached(store, happening.learner);
			return;
		case 'remove':
			await removeLearner(store, happening.learner);
			return;
		default:
			happening satisfies never;
	}
}

test('the cache equals a fresh fold, whatever happened before', async () => {
	await fc.assert(
		fc.asyncProperty(fc.array(happening, { maxLength: 8 }), async (happenings) => {
			const store = await freshStore();
			for (const one of happenings) {
				await happen(store, one);
				for (const row of await store.db.getAll('folds')) {
					const place = folds.findIndex(({ name }) => name === row.fold);
					expect(row.state).toEqual((await fresh(store, row.learner))[place]);
				}
			}
			for (const id of [sam, kit]) expect(await cached(store, id)).toEqual(await fresh(store, id));
			await wipe(store);
		}),
		{ numRuns: 60 }
	);
});

describe('the cache', () => {
	/** Watches from which stores something is read, from here to the end of the test. */
	function watchReads(): () => string[] {
		const spies = [IDBObjectStore.prototype, IDBIndex.prototype].flatMap((source) => [
			vi.spyOn(source, 'get'),
			vi.spyOn(source, 'getAll'),
			vi.spyOn(source, 'openCursor')
		]);
		onTestFinished(() => spies.forEach((spy) => spy.mockRestore()));
		return () => spies.flatMap((spy) => spy.mock.contexts).map(storeOf);
	}

	function storeOf(source: unknown): string {
		if (source instanceof IDBIndex) return source.objectStore.name;
		return source instanceof IDBObjectStore ? source.name : 'unknown';
	}

	test('answers without a look at the log, also in a new tab', async () => {
		const store = await freshStore();
		await merge(
			store,
			Array.from({ length: 20 }, () => attempt())
		);
		const before = await foldState(store, tally, sam);
		const tab = await openAgain({ name: store.db.name });
		const read = watchReads();
		expect(await foldState(tab, tally, sam)).toEqual(before);
		expect(read()).toEqual(['folds']);
		tab.close();
	});

	test('is carried on by a newer event without a look at the log', async () => {
		const store = await freshStore();
		await append(store, attempt());
		await foldState(store, tally, sam);
		const read = watchReads();
		await append(store, attempt());
		expect(await foldState(store, tally, sam)).toEqual({ attempt: 2 });
		expect(read()).not.toContain('events');
	});

	test('is dropped by an event from before', async () => {
		const store = await freshStore();
		await append(store, attempt({ at: 900 }));
		await foldState(store, trail, sam);
		await append(store, attempt({ at: 100 }));
		expect(await store.db.count('folds')).toBe(0);
		expect((await foldState(store, trail, sam)).map((text) => parseInt(text))).toEqual([100, 900]);
	});

	test('of one learner is left alone by the events of another', async () => {
		const store = await freshStore();
		await append(store, attempt({ at: 900 }));
		await foldState(store, trail, sam);
		await append(store, attempt({ at: 100, learner: kit }));
		expect(await store.db.count('folds')).toBe(1);
	});

	test('of another version is not used, and one that this tab cannot carry on is dropped', async () => {
		const next: Fold<string[]> = { ...trail, version: 2, apply: (state) => [...state, 'x'] };
		const store = await freshStore();
		const newer = await openAgain({ name: store.db.name, folds: [next] });
		await append(store, attempt());
		await foldState(store, trail, sam);
		expect(await foldState(newer, next, sam)).toEqual(['x']);
		await append(store, attempt());
		expect(await store.db.count('folds')).toBe(0);
		expect(await foldState(newer, next, sam)).toEqual(['x', 'x']);
		newer.close();
	});

	test('is not written for a learner who is not here', async () => {
		const store = await freshStore({ learners: [] });
		expect(await foldState(store, tally, sam)).toEqual({});
		expect(await store.db.count('folds')).toBe(0);
	});

	test('starts each time from an empty state that no event has touched', async () => {
		const store = await freshStore();
		await append(store, attempt());
		expect(await foldState(store, tally, sam)).toEqual({ attempt: 1 });
		expect(await foldState(store, tally, kit)).toEqual({});
		expect(tally.empty).toEqual({});
	});
});

test('a mistake in a fold loses no answer, and shows when the fold is asked for', async () => {
	const faulty: Fold<number> = {
		name: 'faulty',
		version: 1,
		empty: 0,
		apply(state, event) {
			if (event.type === 'attempt' && event.worked) throw new Error('mistake');
			return state + 1;
		}
	};
	const store = await freshStore({ folds: [faulty] });
	await append(store, attempt());
	expect(await foldState(store, faulty, sam)).toBe(1);
	await append(store, attempt({ worked: true }));
	expect((await allEvents(store)).length).toBe(2);
	await expect(foldState(store, faulty, sam)).rejects.toThrow('mistake');
});
