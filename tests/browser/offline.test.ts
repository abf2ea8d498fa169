import { expect } from 'vitest';
import { openTask } from './keyboard.ts';
import { test } from './site-test.ts';

test('after one visit the app opens and works without a network', async ({ openPage, faults }) => {
	const page = await openPage();
	await page.goto('/');
	await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
	await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
	await page.context().setOffline(true);
	await page.goto('/practice/?task=RL1-007S-3W');
	expect((await openTask(page)).number).toBe('RL1-007S-3W');
	// Arithmetic loads its reader from the device too.
	await page.locator('[data-answer]').fill('1/8+1/16+1/8');
	await page.getByText('5/16 in').first().waitFor();
	await page.goto('/practice?task=RL1-007S-3W');
	expect(new URL(page.url()).pathname).toBe('/practice/');
	expect((await openTask(page)).number).toBe('RL1-007S-3W');
	await page.goto('/rules/');
	await page.getByRole('heading', { name: 'Rules and sources' }).waitFor();
	expect(faults).toEqual([]);
});
