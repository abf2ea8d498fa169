import { describe, expect, test } from 'vitest';
import { composeSet, plainTerms, readWish } from '../../../src/lib/engine/sets/compose.ts';
import {
	countOf,
	dealtDraft,
	type Draft,
	draftOf,
	moved,
	redrawn,
	setOf,
	swapped,
	withCount
} from '../../../src/lib/engine/sets/draft.ts';
import { mostTasks } from '../../../src/lib/engine/sets/set.ts';

const terms = plainTerms('Week 6');
const [RL2, ED1] = [readWish('RL2*2'), readWish('ED1')];
const draft = await withCount(await withCount([], 'Week 6', RL2), 'Week 6', ED1);
const numbers = (of: Draft) => of.map(({ task }) => task.number);

describe('a set that is being composed', () => {
	test('has the tasks that the command line deals for the same words', async () => {
		const set = await composeSet(terms, [RL2, ED1]);
		expect(setOf(terms, draft)).toEqual({ ok: true, set });
		const tasks = draft.map(({ task }) => task);
		expect(draftOf(set, tasks)).toEqual(draft);
	});

	test('takes more of a kind, or fewer, and leaves the others where they are', async () => {
		const more = await withCount(draft, 'Week 6', { ...RL2, count: 4 });
		expect(numbers(more).slice(0, 3)).toEqual(numbers(draft));
		expect(countOf(more, RL2)).toBe(4);
		expect(new Set(numbers(more)).size).toBe(5);
		const fewer = await withCount(more, 'Week 6', { ...RL2, count: 1 });
		expect(numbers(fewer)).toEqual([numbers(draft)[0], numbers(draft)[2]]);
		const most = await withCount(draft, 'Week 6', { ...RL2, count: 99 });
		expect(most).toHaveLength(mostTasks);
		await expect(withCount([], 'Week 6', { ...ED1, count: 60 })).rejects.toThrow(
			/^ED1 gives no more tasks with other numbers; ask for fewer of it\.$/
		);
	});

	test('swaps one task for others of its kind, its marks kept', async () => {
		const marked = draft.with(1, { ...(draft[1] ?? never()), marks: [2, 0, 1, 1] });
		let now: Draft = marked;
		const seen = new Set(numbers(now));
		for (let n = 0; n < 20; n++) {
			now = await swapped(now, 'Week 6', 1);
			seen.add(now[1]?.task.number ?? '');
			expect(now[1]?.marks).toEqual([2, 0, 1, 1]);
			expect(numbers(now).toSpliced(1, 1)).toEqual(numbers(draft).toSpliced(1, 1));
		}
		expect(seen.size).toBe(3 + 20);
		const grown = await withCount(now, 'Week 6', { ...RL2, count: 3 });
		expect(new Set(numbers(grown)).size).toBe(4);
	});

	test('moves tasks, no farther than to either end', () => {
		const [a, b, c] = numbers(draft);
		expect(numbers(moved(draft, 0, 1))).toEqual([b, a, c]);
		expect(numbers(moved(draft, 0, 9))).toEqual([b, c, a]);
		expect(numbers(moved(draft, 2, -1))).toEqual([c, a, b]);
		expect(moved(draft, 7, 0)).toBe(draft);
	});

	test('another seed text draws the same kinds anew', async () => {
		const other = await redrawn(moved(draft, 2, 0), 'Week 7');
		expect(other.map(({ task }) => task.id.code)).toEqual(['ED', 'RL', 'RL']);
		for (const number of numbers(other)) expect(numbers(draft)).not.toContain(number);
		expect(numbers(await redrawn(draft, 'Week 6'))).toEqual(numbers(draft));
	});

	test('is dealt over topics and levels at one press', async () => {
		const dealt = await dealtDraft('Week 6', ['rivets', 'bends'], [2], 12);
		const topics = dealt.map(({ task }) => task.family.topic);
		expect(topics.filter((topic) => topic === 'rivets')).toHaveLength(6);
		expect(new Set(topics).size).toBe(2);
		expect(dealt.every(({ task }) => task.id.level === 2)).toBe(true);
		expect(new Set(numbers(dealt)).size).toBe(12);
	});

	test('says what it lacks', () => {
		const lacks = (title: string, of: Draft) => setOf({ ...terms, title }, of);
		expect(lacks(' ', draft)).toEqual({ ok: false, sentence: 'Give the set a title.' });
		expect(lacks('A', [])).toMatchObject({ sentence: 'Choose what goes into the set.' });
		const none = draft.map((one) => ({ ...one, marks: one.marks.map(() => 0) }));
		expect(lacks('A', none)).toMatchObject({ sentence: 'Give at least one step a mark.' });
		const seeded = setOf({ ...terms, seed: ' ' }, draft);
		expect(seeded.ok && seeded.set.seed).toBe('Week 6');
	});
});

function never(): never {
	throw new Error('no task');
}
