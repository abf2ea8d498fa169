import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import type { Family } from '../../../src/lib/engine/families/family.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { deal, type Dealable, drawDealt } from '../../../src/lib/engine/sets/deal.ts';
import { composeRehearsal } from '../../../src/lib/engine/sets/rehearsal.ts';
import { shuffled } from '../../../src/lib/engine/sets/shuffled.ts';
import { givensOf, numbersIn } from '../../../src/lib/engine/tasks/givens.ts';
import type { Task } from '../../../src/lib/engine/tasks/task.ts';
import { belowFrom } from '../../app/seeded-chance.ts';

const families = await loadFamilies();
const seeds = Array.from({ length: 12 }, (_, i) => `paper ${i}`);
const count = 30;
const topics = new Set(families.map(({ topic }) => topic)).size;
/** Least that must stay of 30 when one family comes or goes, and its topic has others. */
const least = 26;

type Dealt = readonly { readonly number: string }[];

function paper(seed: string, from: readonly Family[]): Dealt {
	return composeRehearsal(seed, from, count).map(({ task }) => task);
}

/** How many numbers of a paper are in another. */
function staying(before: Dealt, after: Dealt): number {
	const numbers = new Set(after.map(({ number }) => number));
	return before.filter(({ number }) => numbers.has(number)).length;
}

const papers = new Map(seeds.map((seed) => [seed, paper(seed, families)]));

/** Of every seed's paper, how many numbers stay when it is dealt from these instead. */
function stayingIn(others: readonly Family[]): number[] {
	return seeds.map((seed) => staying(papers.get(seed) ?? [], paper(seed, others)));
}

/** A family of another code with the tasks of a known one. */
function madeUp(topic: Family['topic']): Family {
	const [one] = families.filter((family) => family.topic === topic);
	if (!one) throw new Error(topic);
	return { ...one, code: 'ZZ', id: 'made-up' };
}

describe('a paper of 30', () => {
	test.each(families.map(({ code, topic }) => [code, topic]))('stays without %s', (code, topic) => {
		const others = families.filter((family) => family.code !== code);
		const stay = stayingIn(others);
		// The only family of a topic takes the whole share of that topic with it.
		const alone = !others.some((family) => family.topic === topic);
		const must = alone ? count - Math.ceil(count / topics) : least;
		expect(Math.min(...stay)).toBeGreaterThanOrEqual(must);
		// It had a task in some of the papers.
		expect(Math.min(...stay)).toBeLessThan(count);
	});

	test.each([...new Set(families.map(({ topic }) => topic))])(
		'stays when a family is added to %s, wherever it stands in the list',
		(topic) => {
			const added = madeUp(topic);
			const first = stayingIn([added, ...families]);
			expect(Math.min(...first)).toBeGreaterThanOrEqual(least);
			expect(stayingIn(families.toSpliced(11, 0, added))).toEqual(first);
			expect(stayingIn([...families, added])).toEqual(first);
		}
	);

	test('does not hang on the order of the families', () => {
		for (const [n, seed] of seeds.entries()) {
			const mixed = shuffled(families, belowFrom(n));
			expect(mixed).not.toEqual(families);
			expect(paper(seed, mixed)).toEqual(papers.get(seed));
		}
	});

	const places = (from: readonly Dealable[], seed: string, n: number) =>
		deal({ seed, families: from, count: n, levels }).map(
			({ family, level, copy }) => `${family.code} ${level} ${copy}`
		);
	const often = families.filter(({ every = 1 }) => every === 1);
	const oftenTopics = new Set(often.map(({ topic }) => topic)).size;

	test('gives a topic of its own its even share, and moves nothing else', () => {
		const n = oftenTopics * (oftenTopics + 1);
		for (const seed of seeds) {
			const before = places(often, seed, n);
			const after = places([...often, { code: 'ZZ', topic: 'another' }], seed, n);
			// Each of n topics has n + 1 tasks, and gives one of them to the new topic.
			expect(after.filter((place) => before.includes(place)).length).toBe(oftenTopics ** 2);
		}
	});

	test('has a topic of long tasks in every third round only', () => {
		const long = { code: 'ZZ', topic: 'another', every: 3 };
		for (const seed of seeds) {
			// Three rounds, in the first of which the long one takes part.
			const dealt = places([...often, long], seed, 3 * oftenTopics + 1);
			expect(dealt.filter((place) => place.startsWith('ZZ'))).toHaveLength(1);
			expect(places([long], seed, 4)).toHaveLength(4);
		}
	});
});

describe('a deal', () => {
	test('of more tasks begins with those of fewer', () => {
		for (const seed of seeds) {
			const places = (n: number) => deal({ seed, families, count: n, levels });
			expect(places(60).slice(0, 17)).toEqual(places(17));
		}
	});

	test('gives each topic and level its share, and every family of a topic the same chance', () => {
		const times = new Map<string, number>();
		const note = (key: string) => times.set(key, (times.get(key) ?? 0) + 1);
		const many = Array.from({ length: 1500 }, (_, i) => String(i));
		const rivets = families.filter(({ topic }) => topic === 'rivets');
		for (const seed of many) {
			const [one] = deal({ seed, families, count: 1, levels });
			note(`topic ${one?.family.topic}`);
			note(`level ${one?.level}`);
			const [first] = deal({ seed, families: rivets, count: 1, levels: levels.toReversed() });
			note(`family ${first?.family.code}`);
		}
		for (const [what, members] of [
			['topic', topics],
			['level', 3],
			['family', rivets.length]
		] as const) {
			const rows = [...times].filter(([key]) => key.startsWith(what));
			expect(rows.length).toBe(members);
			const due = many.length / members;
			// Five standard deviations of a count.
			for (const [key, n] of rows) expect(Math.abs(n - due), key).toBeLessThan(5 * Math.sqrt(due));
		}
	});

	test('of one family takes its levels in turn', () => {
		const [one] = families;
		for (const seed of seeds) {
			const places = deal({ seed, families: families.slice(0, 1), count: 6, levels });
			const row = places.map(({ level }) => level);
			expect(row.slice(0, 3).toSorted()).toEqual([1, 2, 3]);
			expect(row.slice(3)).toEqual(row.slice(0, 3));
			expect(places.map(({ copy }) => copy)).toEqual([0, 1, 2, 3, 4, 5]);
			expect(places.every(({ family }) => family === one)).toBe(true);
		}
	});

	test('from nothing, or by no seed, is refused', () => {
		const good = { seed: 'a', families, count: 3, levels };
		expect(() => deal({ ...good, seed: '' })).toThrow('empty seed');
		expect(() => deal({ ...good, families: [] })).toThrow('nothing to deal');
		expect(() => deal({ ...good, levels: [] })).toThrow('nothing to deal');
	});
});

describe('the tasks of a deal', () => {
	const [one] = families.filter(({ code }) => code === 'RL');
	if (!one) throw new Error('RL');
	const places = deal({ seed: 'a', families: [one], count: 8, levels: [2] });
	const whole = (task: Task) => task;

	test('have numbers of their own, and are the same every time', () => {
		const tasks = drawDealt('a', places, whole);
		expect(new Set(tasks.map((task) => numbersIn(givensOf(task)))).size).toBe(8);
		expect(drawDealt('a', places, whole)).toEqual(tasks);
		expect(drawDealt('b', places, whole).map(({ number }) => number)).not.toEqual(
			tasks.map(({ number }) => number)
		);
	});

	test('are drawn again where they repeat', () => {
		// The same places twice over would else be the same tasks.
		const tasks = drawDealt('a', [...places, ...places], whole);
		expect(tasks.slice(0, 8)).toEqual(drawDealt('a', places, whole));
		expect(new Set(tasks.map((task) => numbersIn(givensOf(task)))).size).toBe(16);
	});

	test('are drawn again where they do not fit, the others staying', () => {
		const [first, ...rest] = drawDealt('a', places, whole);
		const others = drawDealt('a', places, (task) => (task.number === first?.number ? null : task));
		expect(others[0]?.number).not.toBe(first?.number);
		expect(staying(rest, others)).toBe(7);
	});

	test('that never fit are given up, with the family named', () => {
		expect(() => drawDealt('a', places, () => null)).toThrow('RL2 gives no more tasks');
	});
});
