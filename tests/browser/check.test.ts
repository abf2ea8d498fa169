import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { looks, overTheEdge, violations } from './axe.ts';
import { logged } from './dump.ts';
import { test } from './site-test.ts';

const [, phone] = looks;

/** Twelve edge distances of a 1/8 in rivet; 2D is 0.250 in. The eighth was measured three times. */
const readings = [
	['0.309'],
	['0.315'],
	['0.301'],
	['0.322'],
	['0.296'],
	['0.287'],
	['0.274'],
	['0.251', '0.250', '0.252'],
	['0.262'],
	['0.236'],
	['0.249'],
	['0.268']
];

async function enter(page: Page, reading: string): Promise<void> {
	for (const key of reading) await page.getByRole('button', { name: key, exact: true }).click();
	await page.getByRole('button', { name: 'Enter', exact: true }).click();
}

test('what can be checked is there before the script, and what is pressed then begins', async ({
	openPage
}) => {
	const asleep = await openPage({ javaScriptEnabled: false });
	await asleep.goto('/check/');
	await asleep.getByRole('link', { name: 'Edge distance' }).click();
	await asleep.waitForURL('**/check/?*');
	const page = await openPage();
	await page.goto(asleep.url());
	await page.getByRole('heading', { name: 'Edge distance' }).waitFor();
	await page.getByLabel('Rivet diameter', { exact: true }).waitFor();
	expect(new URL(page.url()).search).toBe('');
});

test('twelve edge distances on a phone: two undecided, one out, kept, printed, practised', async ({
	openPage
}) => {
	const page = await openPage({ ...phone });
	await page.goto('/');
	await page.getByRole('link', { name: 'Check a part after the lab' }).click();
	expect(await violations(page), 'the doors').toEqual([]);
	await page.getByRole('link', { name: 'Edge distance' }).click();
	await page.getByLabel('Part', { exact: true }).fill('Coupon C-2');
	await page.getByLabel('Student code').fill('K17');
	await page.getByLabel('Rivet diameter', { exact: true }).fill('1/8');
	await page.getByLabel('Head', { exact: true }).selectOption('protruding');
	for (const [first = '', ...others] of readings) {
		await enter(page, first);
		for (const other of others) {
			await page.getByRole('button', { name: 'Again' }).click();
			await enter(page, other);
		}
	}
	const found = page.locator('.found');
	await found.getByText('1 of 12 fails, 2 undecided, 9 hold.').waitFor();
	await found.getByText('below 2D by 0.014 in').waitFor();
	await found.getByText('Measure holes 8 and 11 again with a micrometer').waitFor();
	expect(await found.getByText('Hole 8 is the mean of 3').count()).toBe(1);
	expect(await overTheEdge(page)).toBe(0);
	expect(await violations(page), 'the result').toEqual([]);

	await page.reload();
	await page.getByRole('button', { name: 'Put away' }).waitFor();
	await found.getByText('1 of 12 fails, 2 undecided, 9 hold.').waitFor();
	await page.getByRole('button', { name: 'Save this check' }).click();
	await page.getByRole('button', { name: 'Saved' }).waitFor();
	const [saved] = await logged(page, 'lab-check');
	expect(saved).toMatchObject({
		method: 'edge-distance',
		part: 'Coupon C-2',
		tool: 'caliper',
		verdict: 'fails',
		skills: [{ skill: 'piece/least-edge', result: 'wrong' }]
	});

	// The next try, pasted from a spreadsheet, lies closer together.
	await page.getByText('The readings as a list').click();
	const list = page.getByLabel('Edge distance, centre of the hole to the edge, as a list');
	await list.fill('0.300\t0.310\t0.315\t0.320\t0.330');
	await found
		.getByText(/Edge distance tightened from ±0\.043 in on \d+ \w+ to ±0\.015 in\./)
		.waitFor();
	await list.fill('0.300; 0.310; x');
	await page.getByText(/value 3: That does not read|value 3: /).waitFor();
	await list.fill(readings.map((one) => one.join(':')).join('\n'));

	await page.emulateMedia({ media: 'print' });
	const sheet = page.locator('.inspection');
	const printed = await sheet.innerText();
	for (const word of ['Coupon C-2', 'K17', 'Dial caliper, 0.001 in', '2D = 0.250 in', 'REWORK'])
		expect(printed).toContain(word);
	expect(printed).toMatch(/FAA-H-8083-31B, ch\.\s4/);
	expect(printed).toMatch(/Instructor, signature/);
	expect(printed).toMatch(/Practice numbers only/);
	expect(await page.locator('.entry').isVisible()).toBe(false);
	await page.emulateMedia({ media: 'screen' });

	// The instructor opens the link, and sees the same without losing a check begun there.
	await page.getByRole('button', { name: 'Ask my instructor' }).click();
	await page.getByLabel(/What do you want to ask/).fill('May hole 10 stay?');
	const link = page.getByLabel('Link to this question');
	await expect.poll(() => link.inputValue()).toMatch(/\/check\/#2\.z\./);
	const desk = await openPage();
	await desk.goto(await link.inputValue());
	await desk.getByText('May hole 10 stay?').waitFor();
	await desk.locator('.found').getByText('1 of 12 fails, 2 undecided, 9 hold.').waitFor();

	await page.getByRole('button', { name: 'Practise edge distance' }).click();
	await page.waitForURL(/\/practice\/\?task=ED1-/);
});
