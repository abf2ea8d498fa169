import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { dayOf } from '../../src/lib/engine/schedule/day.ts';
import { overTheEdge } from './axe.ts';
import { logged } from './dump.ts';
import {
	answerByKeyboard,
	askWhole,
	openTask,
	rightAnswers,
	tabTo,
	wrongAnswers
} from './keyboard.ts';
import { openWithLog, someLog } from './seeded-log.ts';
import { test } from './site-test.ts';
import { loadReader } from '../../src/lib/engine/quantity/reader.ts';

await loadReader();

const phone = { viewport: { width: 360, height: 740 } };
const today = '2026-11-27';

/** Counts presses and keystrokes, and adds up how far things move. */
async function watch(page: Page): Promise<void> {
	await page.addInitScript(() => {
		const seen = { presses: 0, moved: 0 };
		Object.assign(window, { seen });
		for (const type of ['pointerdown', 'keydown']) {
			addEventListener(type, () => seen.presses++, { capture: true });
		}
		new PerformanceObserver((list) => {
			for (const entry of list.getEntries() as (PerformanceEntry & { value: number })[]) {
				seen.moved += entry.value;
			}
		}).observe({ type: 'layout-shift', buffered: true });
	});
}

test('a newcomer on a phone has answered with one number and three presses, and the answer counts', async ({
	openPage
}) => {
	const page = await openPage({ ...phone, own: true });
	await watch(page);
	await page.goto('/');
	await page.getByRole('heading', { name: 'How long must this rivet be?' }).waitFor();
	await page.evaluate(() => document.fonts.ready);
	const moved = (await page.evaluate('seen.moved')) as number;
	expect(moved).toBeLessThan(0.001);
	await page.getByLabel('Length needed').click();
	await page.keyboard.type('.2525');
	await page.locator('label', { hasText: '1/4' }).click();
	await page.getByRole('button', { name: 'Check' }).click();
	await page.getByText('REWORK').waitFor();
	await page.getByRole('img', { name: 'less than the 1.5D wanted' }).waitFor();
	await page.getByText('Shorter than the length needed').waitFor();
	// All of the verdict is in view, and the metal above it.
	const seen = () =>
		page.evaluate(() => {
			const boxOf = (one: string) => document.querySelector(one)?.getBoundingClientRect();
			const { bottom = Infinity } = boxOf('[role="status"] .why') ?? {};
			const { top = -1 } = boxOf('[role="img"]') ?? {};
			return { words: bottom <= innerHeight, metal: top >= 0 };
		});
	await expect.poll(seen).toEqual({ words: true, metal: true });
	expect(await page.evaluate('seen.presses')).toBe(3 + '.2525'.length);
	await page.getByText('Saved on this device.').waitFor();

	await page.locator('label', { hasText: '5/16' }).click();
	await page.keyboard.press('Enter');
	await page.getByText('ACCEPT').waitFor();
	await expect.poll(async () => (await logged(page, 'attempt')).length).toBe(2);
	const [first] = await logged(page, 'attempt');
	expect(first).toMatchObject({
		task: 'RL1-001B-8S',
		typed: { needed: '.2525', length: '1/4 in' }
	});

	// On to the tasks of the day, not to the settings of the plan.
	await page.getByRole('button', { name: 'Go on' }).click();
	await page.locator('[data-answer], [data-answer-choice], .sheet').first().waitFor();
	await page.getByText(/^1 of \d+$/).waitFor();
	expect(new URL(page.url()).pathname).toBe('/practice/');

	// From now on this device knows somebody: today's work comes first.
	await page.goto('/');
	await page.getByRole('heading', { name: /^Left today: \d+ tasks/ }).waitFor();
	expect(await page.getByRole('heading', { name: 'How long' }).count()).toBe(0);
	expect(await overTheEdge(page)).toBeLessThanOrEqual(0);
});

test('the tasks of the day are those that were named, and the run has an end, by keyboard alone', async ({
	openPage
}) => {
	const page = await openPage({ ...phone, time: `${today}T10:00:00` });
	const day = dayOf(today);
	const log = await someLog({ start: day - 9, end: day, rest: 1, tasks: 8 });
	await openWithLog(page, log, '/');
	const title = page.getByRole('heading', { name: /^Today: \d+ tasks, about \d+ minutes/ });
	const named = Number(/\d+/.exec((await title.textContent()) ?? '')?.[0]);
	await page.getByText('What comes back, and why').waitFor();
	expect(await page.getByText('then', { exact: true }).locator('..').first().innerText()).toMatch(
		/^then \w/
	);
	await page.locator('html:not([data-asleep])').waitFor();
	await tabTo(page, 'main button');
	expect(await page.locator(':focus').innerText()).toBe('Start today’s tasks');
	await page.keyboard.press('Enter');
	await page.getByText(new RegExp(`1 of ${named}$`)).waitFor();
	for (let n = 0; ; n++) {
		const task = await openTask(page);
		if ((await page.locator('[data-answer], [data-answer-choice]').count()) > 0) {
			await page.clock.fastForward(90_000);
			await askWhole(page);
			await answerByKeyboard(page, n === 1 ? wrongAnswers(task) : rightAnswers(task));
			await page.locator('.stamp').waitFor();
			await page.getByText('Saved on this device.').waitFor();
		}
		const next = page.locator('[data-next]');
		const last = (await next.textContent())?.includes('Finish') ?? false;
		await tabTo(page, '[data-next]');
		await page.keyboard.press('Enter');
		if (last) break;
		await page.waitForURL((url) => url.searchParams.get('task') !== task.number);
	}
	await page.getByRole('heading', { name: /^Run done: \d+\stasks, \d+\sminutes/ }).waitFor();
	await page.getByText(/^\d+ of \d+$/).waitFor();
	expect(await page.locator('tbody tr').count()).toBeGreaterThanOrEqual(named);
	await tabTo(page, 'main button');
	expect(await page.locator(':focus').innerText()).toMatch(/^Work one more/);
	expect(await overTheEdge(page)).toBeLessThanOrEqual(0);

	await page.goto('/');
	await page.getByRole('heading', { name: 'Today’s tasks are done' }).waitFor();
});

test('in forced colours the page that is open is the only one marked in the rail', async ({
	openPage
}) => {
	const page = await openPage(phone);
	await page.emulateMedia({ forcedColors: 'active' });
	await page.goto('/plan/');
	await page.locator('nav a[aria-current]').waitFor();
	const marked = await page.evaluate(() =>
		[...document.querySelectorAll('nav a')]
			.filter((link) => {
				const { borderBottomColor, borderBottomWidth } = getComputedStyle(link);
				const page = getComputedStyle(document.body).backgroundColor;
				return parseFloat(borderBottomWidth) > 0 && borderBottomColor !== page;
			})
			.map((link) => link.textContent)
	);
	expect(marked).toEqual(['Plan']);
});
