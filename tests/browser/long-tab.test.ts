import { expect } from 'vitest';
import { loadReader } from '../../src/lib/engine/quantity/reader.ts';
import { type Held, answerTasks, held } from './long-tab.ts';
import { test } from './site-test.ts';

await loadReader();

/** Tasks in one stretch, and how many stretches may bring what is brought only once. */
const [tasks, stretches] = [20, 4];

test('what one task brought is let go with the next', async ({ openPage }) => {
	const page = await openPage();
	const browser = await page.context().newCDPSession(page);
	await page.goto('/practice/?task=HD1-004G-51');
	await answerTasks(page, 12);
	// What is left of each task is left in every stretch; what a kind loads or keeps, in one only.
	const left = { nodes: Infinity, listeners: Infinity, values: Infinity };
	let before = await held(page, browser);
	for (let stretch = 0; stretch < stretches && !isLittle(left); stretch++) {
		await answerTasks(page, tasks);
		const after = await held(page, browser);
		left.nodes = Math.min(left.nodes, after.nodes - before.nodes);
		left.listeners = Math.min(left.listeners, after.listeners - before.listeners);
		left.values = Math.min(left.values, (after.values - before.values) / tasks);
		before = after;
	}
	await browser.detach();
	expect(left).toSatisfy(isLittle);
}, 120_000);

/** A sheet has some three hundred nodes. */
const isLittle = ({ nodes, listeners, values }: Held): boolean =>
	nodes < 3 * 300 && listeners < tasks && values < 4000;
