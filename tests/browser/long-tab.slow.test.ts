import { expect } from 'vitest';
import { loadReader } from '../../src/lib/engine/quantity/reader.ts';
import { logged } from './dump.ts';
import { openTask } from './keyboard.ts';
import { answerTasks, held } from './long-tab.ts';
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
	expect((after.heap - before.heap) / (tasks - warm)).toBeLessThan(mostKept);
	const kept = await page.evaluate(() => JSON.stringify(localStorage).length);
	expect(kept).toBeLessThan(60_000);
	const { number } = await openTask(page);
	await page.reload();
	expect((await openTask(page)).number).toBe(number);
	expect((await logged(page, 'attempt')).length).toBe(tasks);
}, 3_600_000);
