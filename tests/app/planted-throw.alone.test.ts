import { beforeEach, describe, expect, test, vi } from 'vitest';
import { ask } from '../../src/lib/app/ask/ask.svelte.ts';
import { writeQuestion } from '../../src/lib/app/ask/ask-link.ts';
import { startFree } from '../../src/lib/app/practice/free-run.ts';
import { Practice } from '../../src/lib/app/practice/practice.svelte.ts';
import { unexpected } from '../../src/lib/app/unexpected.svelte.ts';
import { wrongAnswers } from '../browser/keyboard.ts';
import { samAtWork } from './at-work.ts';

samAtWork();

/** What throws now, as a fault in the program would. */
const plant = vi.hoisted(() => ({ drawing: '', marking: false }));

vi.mock(import('../../src/lib/engine/tasks/task.ts'), async (original) => {
	const real = await original();
	return {
		...real,
		taskFromNumber: async (number: string) => {
			if (plant.drawing === number) throw new Error('planted in drawing');
			return real.taskFromNumber(number);
		}
	};
});
vi.mock(import('../../src/lib/engine/marking/mark.ts'), async (original) => {
	const real = await original();
	return {
		...real,
		mark: (...given: Parameters<typeof real.mark>) => {
			if (plant.marking) throw new Error('planted in marking');
			return real.mark(...given);
		}
	};
});

beforeEach(() => {
	Object.assign(plant, { drawing: '', marking: false });
	unexpected.clear();
	vi.spyOn(console, 'error').mockImplementation(() => {});
});

async function freeRun(): Promise<Practice> {
	const practice = new Practice();
	await startFree(practice, 'rivets', 1);
	return practice;
}

function numberAt({ run }: Practice, index: number): string {
	return run?.tasks[index]?.number ?? '';
}

describe('a task that cannot be drawn', () => {
	test('is told with its number, and the next one opens', async () => {
		const practice = await freeRun();
		plant.drawing = numberAt(practice, 1);
		await practice.next();
		expect(practice.work).toBeNull();
		expect(practice.unopened).toContain(`in task ${plant.drawing}: `);
		await practice.next();
		expect(practice.unopened).toBeNull();
		expect(practice.work?.task.number).toBe(numberAt(practice, 2));
	});

	test('is the same when the address names it, and the run goes on from there', async () => {
		const practice = await freeRun();
		plant.drawing = numberAt(practice, 3);
		expect(await practice.openNumber(plant.drawing)).toBe(false);
		expect(practice.unopened).toContain(plant.drawing);
		await practice.next();
		expect(practice.work?.task.number).toBe(numberAt(practice, 4));
	});

	test('leaves the open one alone when its number was typed', async () => {
		const practice = await freeRun();
		const { work } = practice;
		plant.drawing = 'BW1-03MP-4V';
		expect(await practice.openNumber(plant.drawing)).toBe(false);
		expect(practice.problem).toContain(`in task ${plant.drawing}: `);
		expect(practice.work).toBe(work);
	});
});

test('a check that can no longer be marked leaves what was typed, and says so', async () => {
	const practice = await freeRun();
	const { work } = practice;
	if (!work) throw new Error('no task is open');
	const answers = wrongAnswers(work.task);
	for (const line of work.lines) line.type(answers[line.key] ?? '');
	await work.check();
	practice.keepNotes();

	plant.marking = true;
	const later = new Practice();
	await later.load();
	await later.go(0);
	expect(later.work?.lines.map(({ text }) => text)).toEqual(work.lines.map(({ text }) => text));
	expect(later.work?.checks).toEqual([]);
	expect(unexpected.says).toContain(work.task.number);
	await later.next();
	expect(later.work?.task.number).toBe(numberAt(later, 1));
	expect(unexpected.says).toBeNull();
});

test('a question whose check cannot be marked is told with the number of its task', async () => {
	const task = 'RL1-00C8-8D';
	const check = {
		typed: { needed: '.3', length: '3/16' },
		picked: {},
		units: 'in',
		opened: 0
	} as const;
	const link = await writeQuestion({
		task,
		units: 'in',
		opened: 0,
		byStep: false,
		worked: false,
		before: 0,
		checks: [{ ...check, byStep: false }],
		open: {},
		note: ''
	});
	plant.marking = true;
	await ask.open(link);
	expect(ask.asked).toBeNull();
	expect(ask.problem).toMatch(new RegExp(`in task ${task}: reload this page, or open the task`));
	plant.marking = false;
	await ask.open(link);
	expect(ask.asked?.task.number).toBe(task);
	expect(ask.problem).toBeNull();
});
