import { afterEach, describe, expect, test } from 'vitest';
import { foldState } from '../../src/lib/storage/fold.ts';
import {
	addLearner,
	firstLearner,
	listLearners,
	removeLearner,
	renameLearner,
	useLearner
} from '../../src/lib/storage/learners.ts';
import { append, events, merge } from '../../src/lib/storage/log.ts';
import type { Store } from '../../src/lib/storage/store.ts';
import { LearnerRemoved } from '../../src/lib/storage/trouble.ts';
import { attempt } from './event-arbitrary.ts';
import { collect, copied, everything, freshStore, openAgain, tally, trail } from './fresh-store.ts';

afterEach(() => {
	localStorage.clear();
	sessionStorage.clear();
});

const emptyStore = () => freshStore({ learners: [] });

/** Adds a learner whose nickname is known to be free. */
async function added(store: Store, nickname: string): Promise<string> {
	const change = await addLearner(store, nickname);
	if (!change.ok) throw new Error(change.sentence);
	return change.learner.id;
}

const names = async (store: Store) =>
	(await listLearners(store)).map(({ nickname }) => nickname).sort();

describe('the first of a device', () => {
	test('is one, also when two tabs want one at the same time', async () => {
		const one = await emptyStore();
		const two = await openAgain({ name: one.db.name });
		const both = await Promise.all([one, two].map((store) => firstLearner(store, 'Learner 1')));
		two.close();
		expect(both[0]).toEqual(both[1]);
		expect(await names(one)).toEqual(['Learner 1']);
	});
});

describe('adding', () => {
	test('makes a learner whose log begins with the nickname', async () => {
		const store = await emptyStore();
		const before = Date.now();
		const id = await added(store, '  Sam ');
		const [learner] = await listLearners(store);
		expect(learner).toMatchObject({ id, nickname: 'Sam', unsaved: 1, backedUp: null });
		expect(learner?.created).toBeGreaterThanOrEqual(before);
		expect(await collect(events(store, id))).toMatchObject([{ type: 'learner', nickname: 'Sam' }]);
	});

	test('refuses a nickname that is taken or none, and changes nothing', async () => {
		const store = await emptyStore();
		await added(store, 'Sam');
		const before = await everything(store);
		expect(await addLearner(store, 'sAM')).toEqual({
			ok: false,
			sentence: 'There is a learner called Sam here; choose another name.'
		});
		expect(await addLearner(store, ' ')).toEqual({ ok: false, sentence: 'Type a nickname.' });
		expect(await everything(store)).toEqual(before);
	});

	test('the same nickname in two tabs at once lets one through', async () => {
		const one = await emptyStore();
		const two = await openAgain({ name: one.db.name });
		const changes = await Promise.all([addLearner(one, 'Sam'), addLearner(two, 'sam')]);
		expect(changes.map(({ ok }) => ok).sort()).toEqual([false, true]);
		expect((await listLearners(two)).length).toBe(1);
		two.close();
	});

	test('thirty learners keep their logs apart', async () => {
		const store = await emptyStore();
		const ids: string[] = [];
		for (let i = 1; i <= 30; i++) ids.push(await added(store, `Learner ${i}`));
		await merge(
			store,
			ids.flatMap((learner, i) => Array.from({ length: i }, () => attempt({ learner })))
		);
		expect((await listLearners(store)).length).toBe(30);
		for (const [i, id] of ids.entries()) {
			expect(await foldState(store, tally, id)).toEqual(
				i === 0 ? { learner: 1 } : { learner: 1, attempt: i }
			);
		}
	});
});

describe('renaming', () => {
	test('gives another nickname and notes it in the log', async () => {
		const store = await emptyStore();
		const id = await added(store, 'Sam');
		const change = await renameLearner(store, id, 'Big Sam');
		expect(change).toMatchObject({ ok: true, learner: { id, nickname: 'Big Sam' } });
		expect(await names(store)).toEqual(['Big Sam']);
		const log = await collect(events(store, id));
		expect(log).toMatchObject([{ nickname: 'Sam' }, { nickname: 'Big Sam' }]);
	});

	test('lets a learner change the capitals of the own nickname, not take that of another', async () => {
		const store = await emptyStore();
		const id = await added(store, 'sam');
		await added(store, 'Kit');
		expect((await renameLearner(store, id, 'SAM')).ok).toBe(true);
		expect((await renameLearner(store, id, 'kit')).ok).toBe(false);
		expect(await names(store)).toEqual(['Kit', 'SAM']);
	});

	test('counts though the clock was set back', async () => {
		const store = await emptyStore();
		const id = await added(store, 'Sam');
		const ahead = Date.now() + 3_600_000;
		const naming = { type: 'learner', nickname: 'Samuel', learner: id, at: ahead } as const;
		await merge(store, [{ ...naming, id: crypto.randomUUID(), v: 1, day: '2026-03-09' }]);
		expect(await names(store)).toEqual(['Samuel']);
		await renameLearner(store, id, 'Sammy');
		expect(await names(store)).toEqual(['Sammy']);
	});

	test('of a learner who was removed is refused', async () => {
		const store = await emptyStore();
		const id = await added(store, 'Sam');
		await removeLearner(store, id);
		await expect(renameLearner(store, id, 'Kit')).rejects.toThrow(LearnerRemoved);
		expect(await everything(store)).toEqual({ events: [], folds: [], learners: [] });
	});
});

describe('merging the log of another device', () => {
	const naming = (learner: string, nickname: string, at: number) => ({
		id: crypto.randomUUID(),
		v: 1 as const,
		type: 'learner',
		learner,
		nickname,
		at,
		day: '2026-03-09'
	});

	test('takes over a newer nickname, not an older one', async () => {
		const store = await emptyStore();
		const id = await added(store, 'Sam');
		await merge(store, [naming(id, 'Old', 5), naming(id, 'Older', 3)]);
		expect(await names(store)).toEqual(['Sam']);
		await merge(store, [naming(id, 'New', 9e12), naming(id, 'Newest', 9.1e12)]);
		expect(await names(store)).toEqual(['Newest']);
		expect((await listLearners(store))[0]?.created).toBe(3);
	});

	test('numbers a nickname that another learner has here', async () => {
		const store = await emptyStore();
		const id = await added(store, 'Sam');
		await added(store, 'Kit');
		await merge(store, [naming(id, 'KIT', 9e12)]);
		expect(await names(store)).toEqual(['KIT 2', 'Kit']);
	});
});

test('the list begins with the one last at work', async () => {
	const store = await emptyStore();
	const sam = await added(store, 'Sam');
	const kit = await added(store, 'Kit');
	for (const id of [sam, kit, sam]) {
		await new Promise((resolve) => setTimeout(resolve, 5));
		await useLearner(store, id);
		expect((await listLearners(store))[0]?.id).toBe(id);
	}
});

describe('removing', () => {
	test('leaves no trace of the learner, and everything of the others', async () => {
		const store = await emptyStore();
		const sam = await added(store, 'Sam');
		const kit = await added(store, 'Kit');
		for (const learner of [sam, kit]) {
			await merge(store, [attempt({ learner }), attempt({ learner })]);
			await Promise.all([foldState(store, trail, learner), foldState(store, tally, learner)]);
			localStorage.setItem(`bucktail.run.${learner}`, '{}');
			localStorage.setItem(`bucktail.last-${learner.slice(0, 4)}`, `{"learner":"${learner}"}`);
			sessionStorage.setItem(`bucktail.rehearsal.${learner}`, '{}');
			localStorage.setItem(`other.${learner}`, 'not ours');
		}
		localStorage.setItem('bucktail.settings', '{"units":"mm"}');
		localStorage.setItem('bucktail.rehearsal.first', '{}');
		await removeLearner(store, sam);

		const left = await everything(store);
		expect(Object.keys(left).sort()).toEqual(['events', 'folds', 'learners']);
		expect(JSON.stringify(left)).not.toContain(sam);
		expect(JSON.stringify(left)).not.toContain('Sam');
		const copy = await copied(store);
		expect(copy.map(({ learner }) => learner)).toEqual([kit, kit, kit]);
		expect(Object.values(left).map((rows) => rows.length)).toEqual([3, 2, 1]);
		expect(Object.keys(localStorage).sort()).toEqual(
			[
				`bucktail.last-${kit.slice(0, 4)}`,
				`bucktail.run.${kit}`,
				'bucktail.settings',
				`other.${kit}`,
				`other.${sam}`
			].sort()
		);
		expect(Object.keys(sessionStorage)).toEqual([`bucktail.rehearsal.${kit}`]);
		expect(await foldState(store, tally, kit)).toEqual({ learner: 1, attempt: 2 });
	});

	test('also stops a second tab from bringing anything back', async () => {
		const one = await emptyStore();
		const two = await openAgain({ name: one.db.name });
		const id = await added(one, 'Sam');
		await removeLearner(one, id);
		await expect(append(two, attempt({ learner: id }))).rejects.toThrow(LearnerRemoved);
		await expect(useLearner(two, id)).rejects.toThrow(LearnerRemoved);
		expect(await foldState(two, tally, id)).toEqual({});
		expect(await everything(two)).toEqual({ events: [], folds: [], learners: [] });
		two.close();
	});
});
