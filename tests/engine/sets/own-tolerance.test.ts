import { describe, expect, test } from 'vitest';
import { composeSet, plainTerms, readWish } from '../../../src/lib/engine/sets/compose.ts';
import { markAnswer } from '../../../src/lib/engine/sets/mark-answer.ts';
import { openSet, type SetTask } from '../../../src/lib/engine/sets/open-set.ts';
import {
	ownWithin,
	slipsPassed,
	toleranceWords
} from '../../../src/lib/engine/sets/own-tolerance.ts';
import { readSet, setHash, type TaskSet } from '../../../src/lib/engine/sets/set.ts';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import { stepsOf } from '../../../src/lib/engine/tasks/task.ts';
import { readSetLink, writeSet } from '../../../src/lib/exchange/set-link.ts';
import { answerAt } from './hand-ins.ts';

await loadReader();
const set = await composeSet(
	plainTerms('Week 6'),
	cards.map(({ code }) => readWish(`${code}3`))
);
const plain = await openSet(set);

/** An asked length by itself, and how far off it may be where nothing else is said. */
interface Place {
	readonly place: number;
	readonly key: string;
	readonly tool: string | undefined;
	readonly amount: string;
	readonly right: number;
}

const places: Place[] = plain.tasks.flatMap(({ place, task: { method, drawn, right } }) =>
	drawn.asked.flatMap((key) => {
		const { tolerance } = method.steps[key] ?? {};
		const value = right[key];
		return tolerance && typeof value === 'number'
			? [{ place, key, tool: tolerance.tool, amount: tolerance.amount, right: value }]
			: [];
	})
);

async function verdictOn(tasks: readonly SetTask[], { place, key, right }: Place, off: number) {
	const own = tasks[place - 1];
	if (!own) throw new Error(`no task ${place}`);
	const entry = answerAt(place, { [key]: (right + off).toFixed(6) });
	return (await markAnswer(own, entry)).find((row) => row.key === key)?.verdict;
}

describe('a set that allows other tolerances than the tool', () => {
	const wider = ownWithin('1/32', '0.005');

	test('marks by them, and only where the value is read on that tool', async () => {
		const open = await openSet({ ...set, ...wider });
		const offs = { rule: 0.03, micrometer: 0.0048 };
		const seen = { rule: 0, micrometer: 0 };
		for (const one of places) {
			if (one.tool !== 'rule' && one.tool !== 'micrometer') continue;
			seen[one.tool]++;
			const off = offs[one.tool];
			expect(await verdictOn(open.tasks, one, off), `${one.place} ${one.key}`).toBe('right');
			expect(await verdictOn(plain.tasks, one, off), `${one.place} ${one.key}`).not.toBe('right');
		}
		expect(seen.rule).toBeGreaterThan(5);
		expect(seen.micrometer).toBeGreaterThan(2);
		const others = open.tasks.flatMap(({ task }, i) =>
			stepsOf(task).flatMap((key) => {
				const before = plain.tasks[i]?.task.method.steps[key]?.tolerance;
				return before?.tool ? [] : [[task.method.steps[key]?.tolerance, before]];
			})
		);
		expect(others.length).toBeGreaterThan(30);
		for (const [after, before] of others) expect(after).toBe(before);
	});

	test('marks nearer than the tool where it says so', async () => {
		const open = await openSet({ ...set, ...ownWithin('1/128') });
		const ruled = places.filter(({ tool }) => tool === 'rule');
		const within = await Promise.all(ruled.map((one) => verdictOn(plain.tasks, one, 0.012)));
		const nearer = await Promise.all(ruled.map((one) => verdictOn(open.tasks, one, 0.012)));
		expect(new Set(within)).toEqual(new Set(['right']));
		expect(nearer).not.toContain('right');
	});

	test('names the slips that pass for it', async () => {
		const open = await openSet({ ...set, ...ownWithin('1/16', '0.010') });
		const passed = (tasks: readonly SetTask[]) => tasks.flatMap(({ task }) => slipsPassed(task));
		expect(passed(plain.tasks)).toEqual([]);
		const slips = open.tasks.flatMap(({ place, task }) =>
			slipsPassed(task).map((id) => ({ place, values: task.slips.get(id) }))
		);
		expect(slips.length).toBeGreaterThan(0);
		for (const { place, values } of slips.slice(0, 20)) {
			const own = open.tasks[place - 1];
			const one = places.find((each) => each.place === place);
			const value = one && values?.[one.key];
			if (!own || !one || typeof value !== 'number') continue;
			expect(await verdictOn(open.tasks, one, value - one.right)).toBe('right');
		}
	});

	test('has another hash and link, and is read back; without them nothing changes', async () => {
		const own: TaskSet = { ...set, ...wider };
		expect(setHash(own)).not.toBe(setHash(set));
		expect(JSON.stringify(readSet(set))).not.toContain('within');
		expect(await readSetLink(await writeSet(own))).toEqual({ ok: true, set: own });
		expect(await writeSet(own)).toMatch(/^3\./);
		expect(await writeSet(set)).toMatch(/^2\./);
		expect(toleranceWords(own)).toMatch(/steel rule .* 1\/32 in.*micrometer .* 0\.005 in/);
		expect(toleranceWords(set)).toBe('');
	});

	test('may have none but a few', () => {
		expect(ownWithin('', '')).toEqual({});
		expect(() => ownWithin('1/2')).toThrow(/1\/128, 1\/32 or 1\/16 in/);
		expect(readSet({ ...set, within: { rule: '1' } })).toMatchObject({ ok: false });
	});
});
