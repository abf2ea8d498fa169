import { describe, expect } from 'vitest';
import { isSound } from './axe.ts';
import { test } from './site-test.ts';

describe('the list of keys', () => {
	test('comes on ? and goes on Escape, but not while somebody types', async ({ openPage }) => {
		const page = await openPage();
		await page.goto('/practice/?task=SC1-0004-2J');
		await page.locator('html:not([data-asleep])').waitFor();
		await page.keyboard.press('?');
		const list = page.getByRole('dialog', { name: 'Keys' });
		await list.waitFor();
		expect(await list.innerText()).toContain('checks the answers');
		await isSound(page, 'keys');
		await page.keyboard.press('Escape');
		await list.waitFor({ state: 'detached' });

		await page.goto('/learners/');
		await page.getByLabel('Nickname').first().click();
		await page.keyboard.type('?');
		expect(await page.getByRole('dialog').count()).toBe(0);
	});

	test('keys by themselves are turned off on this device, and on again', async ({ openPage }) => {
		const page = await openPage();
		await page.goto('/learners/');
		await page.getByRole('button', { name: 'List of keys' }).click();
		const list = page.getByRole('dialog', { name: 'Keys' });
		await list.getByRole('checkbox').uncheck();
		await page.keyboard.press('Escape');
		await page.goto('/rules/');
		await page.locator('html:not([data-asleep])').waitFor();
		await page.locator('h1').click();
		await page.keyboard.press('?');
		await page.getByRole('link', { name: 'Learners' }).click();
		await page.getByRole('heading', { name: 'Learners on this device' }).waitFor();
		expect(await page.getByRole('dialog').count()).toBe(0);
		await page.getByRole('button', { name: 'List of keys' }).click();
		await list.getByRole('checkbox').check();
		await page.keyboard.press('Escape');
		await page.keyboard.press('?');
		await list.waitFor();
	});
});

test('the first Tab leads past the links, to the page itself', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/rules/');
	await page.locator('html:not([data-asleep])').waitFor();
	await page.keyboard.press('Tab');
	const past = page.getByRole('button', { name: 'Past the links' });
	expect(await past.evaluate((one) => one === document.activeElement)).toBe(true);
	await isSound(page, 'past the links');
	await page.keyboard.press('Enter');
	await page.keyboard.press('Tab');
	expect(await page.evaluate(() => !!document.activeElement?.closest('main'))).toBe(true);
});
