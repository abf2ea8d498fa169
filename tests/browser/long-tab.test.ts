import { expect } from 'vitest';
import { loadReader } from '../../src/lib/engine/quantity/reader.ts';
import { answerTasks, held } from './long-tab.ts';
import { test } from './site-test.ts';

await loadReader();

// A topic of few kinds, so that all that is kept of a kind is there when the measuring begins.
test('what one task brought is let go with the next', async ({ openPage }) => {
	const page = await openPage();
	const browser = await page.context().newCDPSession(page);
	await page.goto('/practice/?task=HD1-004G-43');
	await answerTasks(page, 12);
	const before = await held(page, browser);
	const tasks = 20;
	await answerTasks(page, tasks);
	const after = await held(page, browser);
	await browser.detach();
	// A sheet has some three hundred nodes.
	expect(after.nodes - before.nodes).toBeLessThan(3 * 300);
	expect(after.listeners - before.listeners).toBeLessThan(tasks);
	expect((after.values - before.values) / tasks).toBeLessThan(4000);
});
