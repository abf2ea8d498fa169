import { beforeEach, describe, expect, test, vi } from 'vitest';
import { device } from '../../../src/lib/app/device/device.svelte.ts';
import { startPlan } from '../../../src/lib/app/plan/start-plan.ts';
import { lookAhead } from '../../../src/lib/app/practice/ahead.ts';
import { startFree } from '../../../src/lib/app/practice/free-run.ts';
import { Practice } from '../../../src/lib/app/practice/practice.svelte.ts';
import { emptyLearning } from '../../../src/lib/engine/schedule/learning.ts';
import { taskFromNumber } from '../../../src/lib/engine/tasks/task.ts';
import { samAtWork } from '../at-work.ts';
import { belowFrom } from '../seeded-chance.ts';

samAtWork();
beforeEach(() => chanceFrom(7));

/** What the browser gives by chance from here on. */
function chanceFrom(seed: number): void {
	const below = belowFrom(seed);
	vi.spyOn(crypto, 'getRandomValues').mockImplementation((words) => {
		(words as unknown as Uint32Array).fill(below(2 ** 32));
		return words;
	});
}

async function freeRun(): Promise<Practice> {
	const practice = new Practice();
	await startFree(practice, 'rivets', 2);
	return practice;
}

/** The numbers of the next tasks of a run, each opened after `before`. */
async function dealt(practice: Practice, count: number, before: () => Promise<void>) {
	const numbers: (string | null)[] = [];
	for (let i = 0; i < count; i++) {
		await before();
		await practice.next();
		expect(practice.work?.task.number).toBe(practice.number);
		numbers.push(practice.number);
	}
	return numbers;
}

describe('the next task, drawn ahead', () => {
	test('is the one that is opened', async () => {
		const practice = new Practice();
		await startPlan(practice);
		await lookAhead(practice);
		const { ahead } = practice;
		expect(ahead?.number).toBe(practice.run?.tasks[1]?.number);
		await practice.next();
		expect(practice.work?.task).toBe(ahead);
		const { drawn, right } = await taskFromNumber(practice.number ?? '');
		expect(ahead).toMatchObject({ drawn, right });
		expect(practice.ahead).toBeNull();
	});

	test('deals the same tasks as without, also past the end of a free run', async () => {
		const plain = await freeRun();
		const without = await dealt(plain, 14, () => Promise.resolve());
		chanceFrom(7);
		const looking = await freeRun();
		expect(await dealt(looking, 14, () => lookAhead(looking))).toEqual(without);
	});

	test('is thrown away where another task comes between', async () => {
		const practice = await freeRun();
		await lookAhead(practice);
		const { ahead } = practice;
		await practice.alike();
		expect(practice.work?.task).not.toBe(ahead);
		expect(practice.work?.task.number).toBe(practice.number);
	});

	test('is chosen anew at the end of a run when the log has changed', async () => {
		const practice = await freeRun();
		await practice.go(9);
		await lookAhead(practice);
		const { ahead } = practice;
		await lookAhead(practice);
		expect(practice.ahead).toBe(ahead);
		device.learning = emptyLearning();
		await lookAhead(practice);
		expect(practice.ahead?.number).not.toBe(ahead?.number);
		expect(practice.run?.tasks).toHaveLength(10);
	});

	test('keeps still where it cannot be drawn, and says so once it is opened', async () => {
		const practice = await freeRun();
		const { run } = practice;
		if (!run) throw new Error('no run');
		practice.keep({
			...run,
			tasks: run.tasks.with(1, { number: 'XX1-0000-00', standing: 'open' })
		});
		await expect(lookAhead(practice)).rejects.toThrow();
		expect(practice.problem).toBeNull();
		await practice.next();
		expect(practice.unopened).not.toBeNull();
	});
});
