import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { isSound } from './axe.ts';
import { dump } from './dump.ts';
import { answerByKeyboard, openTask, wrongAnswers } from './keyboard.ts';
import { test } from './site-test.ts';

async function add(page: Page, nickname: string) {
	await page.getByLabel('Nickname', { exact: true }).fill(nickname);
	await page.keyboard.press('Enter');
	await page.getByText(`${nickname} was added and is at work now.`).waitFor();
}

/** Answers a task wrong, and waits until that is saved. */
async function missTask(page: Page, number: string) {
	await page.goto(`/practice/?task=${number}`);
	await answerByKeyboard(page, wrongAnswers(await openTask(page)));
	await page.getByText('Saved on this device.').waitFor();
}

const remove = (page: Page) => page.getByRole('button', { name: 'Remove …' }).click();

test('thirty learners are found and changed with two clicks from any page', async ({
	openPage
}) => {
	const page = await openPage();
	await page.goto('/learners/');
	for (let n = 1; n <= 30; n++) await add(page, `Learner ${n}`);
	const names = await page.locator('li button strong').allTextContents();
	expect(names).toEqual(Array.from({ length: 29 }, (_, i) => `Learner ${i + 1}`));

	await page.getByRole('navigation').getByRole('link', { name: 'Practice' }).click();
	await openTask(page);
	await page.getByRole('link', { name: 'Learner 30' }).click();
	await page.getByRole('button', { name: 'Work as Learner 17' }).click();
	await page.getByText('Learner 17 is at work now.').waitFor();
	await page.getByRole('link', { name: 'Learner 17' }).waitFor();
	expect(await page.getByRole('heading', { level: 2 }).first().textContent()).toBe('Learner 17');

	// Also where nothing else asks who it is.
	for (const where of ['/choose/', '/rules/', '/learners/']) {
		await page.goto(where);
		await page.getByRole('link', { name: 'Learner 17' }).waitFor();
	}
	await page.getByLabel('Find a nickname').fill('r 2');
	await expect.poll(() => page.locator('li button').count()).toBe(11);
	await page.getByLabel('Find a nickname').fill('nobody of this name');
	await page.getByText('No nickname here has').waitFor();
});

test('every learner has a run of their own', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/learners/');
	await add(page, 'Sam');
	await missTask(page, 'RL1-00C8-8D');
	await page.goto('/learners/');
	await add(page, 'Kit');
	await page.goto('/practice/');
	expect((await openTask(page)).number).not.toBe('RL1-00C8-8D');
	await page.getByRole('link', { name: 'Kit' }).click();
	await page.getByRole('button', { name: 'Work as Sam' }).click();
	await page.getByText('Sam is at work now.').waitFor();
	await page.getByRole('navigation').getByRole('link', { name: 'Practice' }).click();
	expect((await openTask(page)).number).toBe('RL1-00C8-8D');
	await page.locator('.stamp', { hasText: 'REWORK' }).waitFor();
});

test('a learner is renamed; a nickname that is taken, empty or too long is not', async ({
	openPage
}) => {
	const page = await openPage();
	await page.goto('/learners/');
	await add(page, 'Sam');
	await add(page, 'Kit');
	await page.getByRole('button', { name: 'Rename …' }).click();
	const field = page.getByLabel('New nickname for Kit');
	for (const [typed, said] of [
		['sam', 'There is a learner called Sam here'],
		['', 'Type a nickname.'],
		['k'.repeat(31), 'at most 30 characters']
	] as const) {
		await field.fill(typed);
		await field.press('Enter');
		await page.getByRole('alert').filter({ hasText: said }).waitFor();
		expect(await field.inputValue()).toBe(typed);
	}
	await field.fill('Kit the 2nd');
	await field.press('Enter');
	await page.getByText('The nickname is now Kit the 2nd.').waitFor();
	await page.reload();
	await page.getByRole('link', { name: 'Kit the 2nd' }).waitFor();
});

describe('removing a learner', () => {
	test('leaves no trace, whatever the learner did, in this tab or in another', async ({
		openPage
	}) => {
		const page = await openPage();
		await page.goto('/learners/');
		await add(page, 'Kit');
		await add(page, 'Quetzal');
		const { stores } = await dump(page);
		const own = (stores.learners ?? []).find((row) => JSON.stringify(row).includes('Quetzal'));
		const { id } = own as { id: string };

		await missTask(page, 'RL1-00C8-8D');
		await page.goto('/');
		await page.getByRole('button', { name: 'Start today’s tasks' }).click();
		await openTask(page);
		const other = await page.context().newPage();
		await missTask(other, 'ED1-0002-57');
		await other.locator('[data-answer]').first().fill('.4321');

		await page.goto('/learners/');
		expect(JSON.stringify(await dump(page))).toContain(id);
		await remove(page);
		await page.getByRole('button', { name: 'Remove without a backup' }).click();
		await page.getByText('Quetzal was removed from this device. Kit is at work now.').waitFor();
		await other.goto('/rules/');
		await other.goto('/practice/');
		await openTask(other);
		await other.close();

		const left = JSON.stringify(await dump(page));
		expect(left).toContain('Kit');
		for (const trace of [id, 'Quetzal', '97.7', '.4321']) expect(left).not.toContain(trace);
	});

	test('of the last one leaves a device as it was when it was new', async ({ openPage }) => {
		const page = await openPage();
		await missTask(page, 'RL1-00C8-8D');
		await page.goto('/learners/');
		await remove(page);
		await page.getByRole('button', { name: 'Remove without a backup' }).click();
		await page.getByText('Learner 1 was removed from this device.').waitFor();
		const { stores, copy, local, session } = await dump(page);
		expect(Object.values(stores).flat()).toEqual([]);
		expect(Object.values(copy).flat()).toEqual([]);
		expect(local).toEqual({});
		expect(Object.keys(session).filter((key) => key.startsWith('bucktail'))).toEqual([]);
	});

	test('is called off by its button and by Escape, and changes nothing', async ({ openPage }) => {
		const page = await openPage();
		await page.goto('/learners/');
		await add(page, 'Sam');
		const before = await dump(page);
		await remove(page);
		await page.getByRole('button', { name: 'Keep Sam' }).click();
		await remove(page);
		await page.getByRole('dialog').waitFor();
		await page.keyboard.press('Escape');
		await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
		expect(await dump(page)).toEqual(before);
		// Still there to be asked for again.
		await remove(page);
		await page.getByRole('dialog').waitFor();
	});

	test('goes on with a backup, from which everything comes back', async ({ openPage }) => {
		const page = await openPage();
		await page.goto('/learners/');
		await add(page, 'Sam');
		await missTask(page, 'RL1-00C8-8D');
		await page.goto('/learners/');
		const before = await dump(page);
		await remove(page);
		const saving = page.waitForEvent('download');
		await page.getByRole('button', { name: 'Save a backup first' }).click();
		const file = await saving;
		expect(file.suggestedFilename()).toMatch(/^bucktail-sam-\d{4}-\d\d-\d\d\.json$/);
		await page.getByRole('button', { name: 'Remove Sam' }).click();
		await page.getByText('Sam was removed from this device.').waitFor();
		expect((await dump(page)).stores.events).toEqual([]);

		await page.getByLabel('Restore from a backup file').setInputFiles(await file.path());
		await page.getByRole('button', { name: 'Add to this device' }).click();
		await page.getByText('2 records were new. 1 learner was added.').waitFor();
		expect((await dump(page)).stores.events).toEqual(before.stores.events);
	});
});

test('no state of the page breaks a rule that a program can check', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/learners/');
	await page.getByLabel('Nickname', { exact: true }).waitFor();
	await isSound(page, 'nobody');
	for (let n = 1; n <= 10; n++) await add(page, `Learner ${n}`);
	await add(page, 'M'.repeat(30));
	await isSound(page, 'eleven');
	await page.getByRole('button', { name: 'Rename …' }).click();
	await page.getByLabel('New nickname').fill('Learner 1');
	await page.keyboard.press('Enter');
	await page.getByRole('alert').filter({ hasText: 'There is a learner' }).waitFor();
	await isSound(page, 'a nickname that is taken');
	await page.getByRole('button', { name: /^Keep/ }).click();
	await remove(page);
	await isSound(page, 'asking before removing');
	await page.getByRole('button', { name: 'Save a backup first' }).click();
	await page.getByText('See that it is there').waitFor();
	await isSound(page, 'after the backup');
});
