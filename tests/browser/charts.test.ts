import { expect } from 'vitest';
import { overTheEdge, violations } from './axe.ts';
import { logged } from './dump.ts';
import { answerByKeyboard, openTask, rightAnswers } from './keyboard.ts';
import { test } from './site-test.ts';

test('a chart is looked up over the task on a phone, and nothing is lost by it', async ({
	openPage
}) => {
	const viewport = { width: 360, height: 740 };
	const page = await openPage({ viewport, colorScheme: 'dark' });
	await page.goto('/practice/?task=RL1-00C8-8D');
	const task = await openTask(page);
	const field = page.locator('[data-answer]').first();
	await field.fill('1/4');

	await page.getByRole('button', { name: 'Charts' }).press('Enter');
	const charts = page.getByRole('dialog', { name: 'Charts' });
	await charts.getByRole('grid').waitFor();
	await charts.getByRole('button', { name: 'Minimum bend radius' }).click();
	await charts.getByLabel('Find in the charts').fill('0.063');
	const row = charts.getByRole('row', { name: '0.063' });
	// A finger marks as it is lifted, for until then it may have come to scroll.
	const lit = charts.locator('td.lit');
	const finger = await page.context().newCDPSession(page);
	const box = await row.getByRole('gridcell').nth(1).boundingBox();
	const at = { x: (box?.x ?? 0) + 5, y: (box?.y ?? 0) + 5 };
	await finger.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at] });
	await page.evaluate(() => new Promise(requestAnimationFrame));
	expect(await lit.count()).toBe(0);
	await finger.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
	await lit.first().waitFor();
	await finger.detach();
	await page.keyboard.press('ArrowRight');
	// Row and column of the cell that has the focus.
	expect(await row.getAttribute('class')).toContain('lit');
	expect(await page.locator('th.lit').allInnerTexts()).toEqual(['6061-T6']);
	expect(await page.locator(':focus').innerText()).toBe('0.16');
	expect(await violations(page)).toEqual([]);
	expect(await overTheEdge(page)).toBeLessThanOrEqual(0);
	// What is said of cells that are not shown is left out, and no column is without its heading.
	const note = charts.getByText('suspect and never used');
	await charts.getByLabel('Find in the charts').fill('159');
	await charts.getByRole('button', { name: 'K for setback' }).click();
	await note.waitFor();
	await charts.getByLabel('Find in the charts').fill('45');
	await note.waitFor({ state: 'detached' });
	await charts.getByLabel('Find in the charts').fill('0.25');
	await charts.getByRole('button', { name: 'Number and letter drills' }).click();
	const lefts = charts.getByRole('rowheader');
	await charts.getByRole('row', { name: 'E 0.2500' }).waitFor();
	expect(
		new Set(await lefts.evaluateAll((all) => all.map((one) => one.getBoundingClientRect().left)))
			.size
	).toBe(1);
	await charts.getByLabel('Find in the charts').fill('unheard of');
	await charts.getByText('No chart has “unheard of”.').waitFor();

	await page.keyboard.press('Escape');
	await charts.waitFor({ state: 'detached' });
	expect(await page.locator(':focus').innerText()).toBe('Charts');
	expect(await field.inputValue()).toBe('1/4');

	await answerByKeyboard(page, rightAnswers(task));
	await page.getByText('Saved on this device.').waitFor();
	const [attempt] = await logged(page, 'attempt');
	expect(attempt?.charts).toContain('least-radius');
	expect(attempt?.skills.every(({ result }) => result === 'right')).toBe(true);
});
