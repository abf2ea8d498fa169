import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { isSound } from './axe.ts';
import { logged } from './dump.ts';
import { linesInPdf } from './pdf-lines.ts';
import { test } from './site-test.ts';

async function opened(page: Page): Promise<void> {
	await page.goto('/');
	await page.getByRole('link', { name: 'Plan a panel' }).click();
	await page.locator('.drawing svg circle').first().waitFor();
}

/** Clicks a button that saves a file, and reads it. */
async function saved(page: Page, name: string): Promise<string> {
	const [file] = await Promise.all([
		page.waitForEvent('download'),
		page.getByRole('button', { name, exact: true }).click()
	]);
	return readFileSync(await file.path(), 'utf8');
}

test('a panel of one’s own: from its size to the bench, and on paper at full size', async ({
	openPage
}) => {
	const page = await openPage();
	await opened(page);
	// Two frames and a stringer on 22 by 14: 15, 15 and 23 holes, two of them shared.
	await page.getByText('51 holes', { exact: false }).first().waitFor();
	await page.getByRole('cell', { name: 'MS20470AD4-5' }).waitFor();

	// A frame off the panel is told at its field, and the rest is still worked.
	await page.getByText('Frame B, across at 16').click();
	const place = page.locator('#field-members-1-at');
	await place.fill('36');
	const sentence =
		'Frame B, place: 36 in is outside the panel, which is 22 in that way; correct it.';
	await page.locator('#field-members-1-at-says', { hasText: sentence }).waitFor();
	await page.getByText('37 holes', { exact: false }).first().waitFor();
	// So is a size that cannot be read, and the drawing stays.
	const size = page.locator('#field-panel-length');
	await size.fill('long');
	await page
		.locator('#field-panel-length-says', { hasText: 'That does not read as a length' })
		.waitFor();
	expect(await page.locator('.hole').count()).toBe(37);
	await size.fill('22');
	await place.fill('15 7/8');
	await page.getByText('51 holes', { exact: false }).first().waitFor();

	// A frame too near the edge is put right by one press.
	await place.fill('21 7/8');
	await page.getByRole('button', { name: 'Set Frame B 3/16 in to the left' }).click();
	await expect.poll(() => place.inputValue()).toBe('21 11/16 in');
	await place.fill('15 7/8');

	// A file that cannot be worked does not stand under the drawing of another panel.
	const file = { name: 'cut.json', mimeType: 'application/json' };
	const chosen = page.locator('input[type=file]');
	const whole = await saved(page, 'Panel file');
	await chosen.setInputFiles({
		...file,
		buffer: Buffer.from('{"panel":{"name":"Cut","length":"9"}}')
	});
	await page.getByRole('alert').getByText('Panel, width: it is missing; write one.').waitFor();
	expect(await page.locator('.hole').count()).toBe(0);
	await page.locator('#field-panel-width').fill('9');
	await page.locator('#field-panel-thickness').fill('0.032');
	await chosen.setInputFiles({ ...file, buffer: Buffer.from(whole) });
	await page.getByText('51 holes', { exact: false }).first().waitFor();

	// The hole under the finger is named: the crossing of frame A and the stringer.
	await page.locator('.drawing svg').focus();
	for (let i = 0; i < 7; i++) await page.keyboard.press('ArrowRight');
	await page.getByRole('heading', { name: 'A8 Frame A and Stringer' }).waitFor();

	const table = await saved(page, 'Holes, CSV');
	expect(table).toContain(
		'A8,6,7,Frame A,Stringer,0.032; 0.04; 0.032,0.104,MS20470AD4-5,1/8 in,No. 30'
	);
	const dxf = await saved(page, 'Save DXF');
	expect(dxf.match(/CIRCLE\r\n8\r\nHOLES/g)).toHaveLength(51);

	// Ticks are in the log, and there again after the page is opened anew.
	await page.getByRole('button', { name: 'Shop list' }).click();
	// A hole that two rows share is listed once, and named in the other.
	await page.getByText('Shared with A8 at 6.000 (6)', { exact: false }).waitFor();
	for (let i = 0; i < 3; i++) await page.getByRole('button', { name: 'Done' }).click();
	await page.getByText('Mark: 3 of 51.', { exact: false }).waitFor();
	await expect.poll(async () => (await logged(page, 'panel-tick')).length).toBe(3);
	expect((await logged(page, 'panel')).at(-1)?.file).toContain('"at":"15 7/8"');
	await page.reload();
	await page.getByRole('button', { name: 'Shop list' }).click();
	await page.getByText('Mark: 3 of 51.', { exact: false }).waitFor();

	await page.getByRole('link', { name: 'Print 1:1' }).click();
	await page.locator('.tile').first().waitFor();
	for (const format of ['Letter', 'A4']) {
		const sheets = linesInPdf(await page.pdf({ format, preferCSSPageSize: true }));
		// 22.5 in in windows of 6.5 and 14.5 in windows of 9.2.
		expect(sheets).toHaveLength(8);
		for (const lines of sheets) {
			const inches = lines.map(({ x1, y1, x2, y2 }) => Math.hypot(x2 - x1, y2 - y1) / 72);
			const near = (length: number) => inches.some((one) => Math.abs(one - length) < 0.01);
			// The line to measure, and the sides of the panel between its round corners.
			expect([10, 21.5, 13.5].filter((one) => !near(one))).toEqual([]);
		}
	}

	// Who works in millimetres gets tables and a line to measure in millimetres.
	await page.getByLabel('mm').check();
	await page.getByText('this line is 250 mm long', { exact: false }).first().waitFor();
	const metric = linesInPdf(await page.pdf({ format: 'A4', preferCSSPageSize: true }));
	for (const lines of metric) {
		const sizes = lines.map(({ x1, y1, x2, y2 }) => (Math.hypot(x2 - x1, y2 - y1) / 72) * 25.4);
		expect(sizes.some((one) => Math.abs(one - 250) < 0.25)).toBe(true);
	}
	await page.getByRole('link', { name: 'Back to the panel' }).click();
	const inMillimetres = await saved(page, 'Holes, CSV');
	expect(inMillimetres).toContain('hole,x mm,y mm,row');
	expect(inMillimetres).toContain('A8,152.4,177.8,Frame A,Stringer');
});

test('the page breaks no rule that a program can check', async ({ openPage }) => {
	const page = await openPage();
	await opened(page);
	await isSound(page, 'a panel');
	await page.getByRole('button', { name: 'Shop list' }).click();
	await isSound(page, 'its shop list');
});
