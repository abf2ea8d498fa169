import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import { looks, overTheEdge, violations } from './axe.ts';
import { logged } from './dump.ts';
import { test } from './site-test.ts';

const [, phone] = looks;

test('a panel to hand in on Monday: what to do today, what is short, one question sent', async ({
	openPage
}) => {
	// A Thursday; the first time offered begins at the next quarter hour.
	const page = await openPage({ ...phone, time: '2026-11-26T14:05:00' });
	await page.goto('/panel/');
	await page.getByRole('link', { name: 'Time plan' }).click();
	const title = page.getByRole('heading', { level: 1 });
	await expect.poll(() => title.innerText()).toBe('Side panel: 5\u00a0h\u00a030 of work');
	await page.getByLabel('Hand in on').fill('2026-11-30');
	await page.getByRole('button', { name: 'Add a time at the bench' }).click();
	await page.getByRole('button', { name: 'Add the next day' }).click();
	// 14:15 to 16:15 on Thursday and on Friday.
	await expect.poll(() => title.innerText()).toBe('Side panel: 1\u00a0h\u00a030 short');
	await page.getByText(/1.h.30 are missing: leave step 11 until after the hand-in/).waitFor();
	await page.getByLabel('Time 2 to').fill('18:00');
	await expect.poll(() => title.innerText()).toBe('Side panel: 15 minutes to spare');

	// The first step took 30 minutes where 25 were guessed: the rest is stretched by 1.2.
	await page.getByRole('checkbox', { name: 'Step 1 done' }).check();
	await page.getByLabel('Minutes of step 1', { exact: true }).fill('30');
	await page.getByLabel('Minutes of step 1', { exact: true }).press('Enter');
	await page.getByText('took 1.20 times the first guess', { exact: false }).waitFor();
	expect(await page.getByLabel('Minutes of step 2', { exact: true }).inputValue()).toBe('48');
	await page.getByLabel('Minutes of step 2', { exact: true }).fill('soon');
	await page.getByLabel('Minutes of step 2', { exact: true }).press('Enter');
	await page.getByText('Write whole minutes from 1 to 1440.').waitFor();

	await page.getByLabel('A question').fill('May the stringer run 1/16 further?');
	await page.reload();
	// A question that was being written is still there.
	await expect.poll(() => page.getByLabel('A question').inputValue()).toMatch(/stringer run/);
	await page.getByLabel('Step that waits for it').selectOption('pilot');
	await page.getByRole('button', { name: 'Keep the question' }).click();
	// 14:15, and 48, 36 and 12 minutes: 15:51.
	await page.getByText('blocks step 5 · ask before 15:51 today').waitFor();
	expect(await violations(page)).toEqual([]);
	expect(await overTheEdge(page)).toBe(0);
	await expect.poll(async () => (await logged(page, 'time-plan')).length).toBeGreaterThan(3);

	const [file] = await Promise.all([
		page.waitForEvent('download'),
		page.getByRole('button', { name: 'Calendar file' }).click()
	]);
	const calendar = readFileSync(await file.path(), 'utf8');
	expect(calendar).toContain('DTSTART:20261126T141500\r\nDURATION:PT48M');
	expect(calendar).toContain('DTSTART:20261130T110000');

	await page.getByRole('button', { name: 'Send or print' }).click();
	const link = page.getByLabel('Link to these questions');
	await expect.poll(() => link.inputValue()).toMatch(/\/panel\/questions\/#2\.z\./);
	// The instructor sees the question, when it is wanted, and the panel it is about.
	const desk = await openPage();
	await desk.goto(await link.inputValue());
	await desk.getByText('May the stringer run 1/16 further?').waitFor();
	await desk.getByText('Pilot 51 holes, before Thu 26 Nov, 15:51').waitFor();
	await expect.poll(() => desk.locator('.drawing .hole').count()).toBe(51);
	await desk.goto(`${(await link.inputValue()).slice(0, -4)}`);
	await desk.reload();
	await desk.getByText('That link is damaged or cut short').waitFor();
});
