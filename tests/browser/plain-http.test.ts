import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { logged } from './dump.ts';
import { answerByKeyboard, askWhole, openTask, rightAnswers, wrongAnswers } from './keyboard.ts';
import { plainSite, test } from './site-test.ts';

/** Opens a page whose browser takes it for unsafe, so that part of what it has is missing. */
async function openPlain(openPage: (visitor: { baseURL: string }) => Promise<Page>) {
	const page = await openPage({ baseURL: plainSite() });
	await page.goto('/rules/');
	expect(
		await page.evaluate(() => [isSecureContext, 'randomUUID' in crypto, 'storage' in navigator])
	).toEqual([false, false, false]);
	return page;
}

test('practice draws a task, marks it, and has the answer after a reload', async ({ openPage }) => {
	const page = await openPlain(openPage);
	await page.goto('/practice/');
	const task = await openTask(page);
	await answerByKeyboard(page, wrongAnswers(task));
	await page.locator('.stamp', { hasText: 'REWORK' }).waitFor();
	await answerByKeyboard(page, rightAnswers(task));
	await page.locator('.stamp', { hasText: 'ACCEPT' }).waitFor();
	await page.getByText('Saved on this device.').waitFor();
	await page.reload();
	await page.locator('.stamp', { hasText: 'ACCEPT' }).waitFor();
	const attempts = await logged(page, 'attempt');
	expect(attempts.map((attempt) => attempt.task)).toEqual([task.number, task.number]);
	expect(new Set(attempts.map(({ id }) => id)).size).toBe(2);
	await page.goto('/progress/');
	await page.getByText('1 task on 1 day,').waitFor();
});

test('today’s tasks start, and the first answer is stored', async ({ openPage }) => {
	const page = await openPlain(openPage);
	await page.goto('/');
	await page.getByText('open it as https, or on this computer as localhost').waitFor();
	await page.getByRole('link', { name: 'Drill for the exam' }).click();
	await page.getByRole('button', { name: 'Start today’s tasks' }).click();
	await openTask(page);
	// The first one is worked for whoever is new.
	await page.getByRole('button', { name: /^Now / }).click();
	await page.locator('[data-answer], [data-answer-choice]').first().waitFor();
	await askWhole(page);
	const task = await openTask(page);
	await answerByKeyboard(page, rightAnswers(task));
	await page.getByText('Saved on this device.').waitFor();
	const [attempt] = await logged(page, 'attempt');
	expect(attempt).toMatchObject({ task: task.number, source: 'plan' });
});

test('a rehearsal is started and handed in', async ({ openPage }) => {
	const page = await openPlain(openPage);
	await page.goto('/rehearsal/');
	await page.getByRole('button', { name: 'Start the rehearsal' }).click();
	await page.locator('#question').waitFor();
	await page.locator('fieldset input').first().check();
	await page.getByRole('button', { name: 'Hand in' }).click();
	await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).click();
	await page.locator('#report').waitFor();
	await expect.poll(async () => (await logged(page, 'attempt')).length).toBeGreaterThan(0);
});

test('a question is asked, and its link is there to be copied by hand', async ({ openPage }) => {
	const page = await openPlain(openPage);
	await page.goto('/practice/?task=RL1-00C8-8D');
	await openTask(page);
	await page.getByRole('button', { name: 'Ask my instructor' }).click();
	await page.getByLabel('What do you want to ask?').fill('Why?');
	await page.getByRole('button', { name: 'Copy link' }).click();
	await page.getByText('the link is selected').waitFor();
	await page.reload();
	await page.getByText('Why?').first().waitFor();
});

test('a learner is added, and every page has its heading', async ({ openPage }) => {
	const page = await openPlain(openPage);
	await page.goto('/learners/');
	await page.getByLabel('Nickname', { exact: true }).fill('Quetzal');
	await page.keyboard.press('Enter');
	await page.getByText('Quetzal was added').waitFor();
	await page.getByText('does not say whether it keeps your work').waitFor();
	for (const path of ['/', '/practice/', '/plan/', '/rehearsal/', '/progress/', '/rules/']) {
		await page.goto(path);
		await page.locator('h1').first().waitFor();
		await expect
			.poll(() => page.locator('p.soft', { hasText: /…\s*$/ }).count(), { message: path })
			.toBe(0);
	}
});
