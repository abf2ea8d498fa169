import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { answerByKeyboard, openTask, wrongAnswers } from './keyboard.ts';
import { test } from './site-test.ts';

/** What a browser gives whose store stands still: a request that nobody hears of again. */
async function silence(page: Page): Promise<void> {
	await page.clock.install();
	await page.addInitScript(() => {
		const { open } = IDBFactory.prototype;
		IDBFactory.prototype.open = function (name) {
			return Object.assign(open.call(this, name), { addEventListener() {} });
		};
	});
}

async function isTold(page: Page): Promise<void> {
	const sentence = page.getByText('The store on this device does not answer');
	await expect
		.poll(async () => {
			await page.clock.fastForward(9000);
			return sentence.isVisible();
		})
		.toBe(true);
}

test('a store that never answers is told, and practice goes on without it', async ({
	openPage
}) => {
	const page = await openPage({ own: true });
	await silence(page);
	await page.goto('/practice/?task=RL1-00C8-8D');
	const task = await openTask(page);
	await answerByKeyboard(page, wrongAnswers(task));
	await page.locator('.stamp', { hasText: 'REWORK' }).waitFor();
	await isTold(page);
});

test('the first page tells it too, to a newcomer and to who has been here', async ({
	openPage
}) => {
	const page = await openPage({ own: true });
	await silence(page);
	await page.goto('/');
	await page.getByLabel('Length needed').fill('.2');
	await page.locator('label', { hasText: '1/4' }).click();
	await page.getByRole('button', { name: 'Check' }).click();
	await page.locator('.stamp', { hasText: 'REWORK' }).waitFor();
	await isTold(page);
	await page.evaluate(() => localStorage.setItem('bucktail.learner', 'somebody'));
	await page.reload();
	await isTold(page);
	expect(await page.getByText('Working out your day').count()).toBe(0);
	await page.getByRole('link', { name: 'Choose a topic' }).click();
	await page.getByRole('heading', { name: 'Choose what to work on' }).waitFor();
});
