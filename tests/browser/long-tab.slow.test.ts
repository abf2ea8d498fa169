import { expect } from 'vitest';
import { courseKey } from '../../src/lib/engine/schedule/course-fold.ts';
import { firstSettings } from '../../src/lib/engine/schedule/course-settings.ts';
import { dayOf, isoOf } from '../../src/lib/engine/schedule/day.ts';
import type { KnownEvent } from '../../src/lib/engine/schedule/event.ts';
import { loadReader } from '../../src/lib/engine/quantity/reader.ts';
import { logged } from './dump.ts';
import { openTask } from './keyboard.ts';
import { answerTasks, finishRun, held } from './long-tab.ts';
import { learner, openWithLog, someLog } from './seeded-log.ts';
import { test } from './site-test.ts';

/*
 * Two thousand tasks in one tab, from all topics, answered one after the other without a reload.
 * By the six hundredth every kind of task has come up often enough for whatever is kept of it.
 */

await loadReader();

const [warm, tasks] = [600, 2000];

/** Bytes that a tab may keep of each task: its share of the learner's memory, no more. */
const mostKept = 1000;

test('after 2,000 tasks a tab holds what it held after 600, and a reload opens the same task', async ({
	openPage
}) => {
	const page = await openPage();
	const browser = await page.context().newCDPSession(page);
	await page.goto('/practice/');
	await answerTasks(page, warm);
	const before = await held(page, browser);
	await answerTasks(page, tasks - warm);
	const after = await held(page, browser);
	await browser.detach();
	expect(after.nodes - before.nodes).toBeLessThan(3 * 300);
	// One task has more fields than another.
	expect(after.listeners - before.listeners).toBeLessThan(100);
	expect((after.values - before.values) / (tasks - warm)).toBeLessThan(mostKept);
	const kept = await page.evaluate(() => JSON.stringify(localStorage).length);
	expect(kept).toBeLessThan(60_000);
	const { number } = await openTask(page);
	await page.reload();
	expect((await openTask(page)).number).toBe(number);
	expect((await logged(page, 'attempt')).length).toBe(tasks);
}, 3_600_000);

test('runs of the plan, day after day in one tab, keep as little of their tasks', async ({
	openPage
}) => {
	const first = dayOf('2026-11-26');
	const start = first - 60;
	const log: KnownEvent[] = await someLog({ start, end: first, tasks: 8 });
	const value = { ...firstSettings(isoOf(start)), exam: '2027-03-10' };
	const id = 'c0000000-0000-4000-8000-000000000001';
	const stamp = { id, v: 1, learner, at: 1, day: isoOf(start) } as const;
	log.push({ ...stamp, type: 'setting', key: courseKey, value });
	const page = await openPage({ time: `${isoOf(first)}T10:00:00` });
	await openWithLog(page, log, '/');
	const browser = await page.context().newCDPSession(page);
	let day = first;
	const work = async (until: number) => {
		let tasks = 0;
		for (; day < until; day++) {
			await page.clock.setSystemTime(new Date(`${isoOf(day)}T10:00:00`));
			await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
			await page.getByRole('button', { name: 'Start today’s tasks' }).click();
			tasks += await finishRun(page);
			await page.getByRole('heading', { name: /^Run done/ }).waitFor();
			await page.getByRole('link', { name: 'Bucktail' }).click();
			await page.getByRole('heading', { name: /^Run done/ }).waitFor({ state: 'detached' });
		}
		return tasks;
	};
	await work(first + 8);
	const before = await held(page, browser);
	const tasks = await work(first + 24);
	const after = await held(page, browser);
	await browser.detach();
	expect(tasks).toBeGreaterThan(100);
	expect(after.nodes - before.nodes).toBeLessThan(3 * 300);
	expect(after.listeners - before.listeners).toBeLessThan(100);
	expect((after.values - before.values) / tasks).toBeLessThan(mostKept);
}, 3_600_000);
