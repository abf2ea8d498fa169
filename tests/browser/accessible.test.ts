import { expect } from 'vitest';
import { isSound, looks } from './axe.ts';
import { answerByKeyboard, openTask, wrongAnswers } from './keyboard.ts';
import { test } from './site-test.ts';

test('no page or state breaks a rule that a program can check', async ({ openPage }) => {
	const page = await openPage();
	for (const path of ['/', '/rules/']) {
		await page.goto(path);
		await page.locator('h1').waitFor();
		// Until its script has come a page cannot be worked, and is not what is looked at here.
		await page.locator('html:not([data-asleep])').waitFor();
		await isSound(page, path);
	}
	await page.goto('/practice/?task=BW3-1GJT-48');
	await openTask(page);
	await isSound(page, 'a long task');
	await page.goto('/practice/?task=SC3-0003-4J');
	const task = await openTask(page);
	await isSound(page, 'a task');
	await answerByKeyboard(page, wrongAnswers(task));
	await page.locator('.stamp').waitFor();
	await isSound(page, 'rework');
	await page.setViewportSize(looks[1].viewport);
	expect(await page.evaluate(placesOf, order)).toEqual(order);
	await page.setViewportSize(looks[0].viewport);
	await page.getByRole('button', { name: 'Show the working' }).click();
	await isSound(page, 'the working');
});

/** What stands on a sheet after a wrong answer, in the order of work. */
const order = ['h1', 'figure', '[data-answer]', '.stamp', '[data-next]'];

/** Runs in the page: selectors by where they stand in the source; null for what is not below what stands before it. */
function placesOf(selectors: readonly string[]): (string | null)[] {
	const all = [...document.querySelectorAll(selectors.join())];
	const firsts = selectors.map((selector) => document.querySelector(selector));
	const found = all.filter((one) => firsts.includes(one));
	const tops = found.map((one) => one.getBoundingClientRect().top);
	return found.map((one, i) =>
		i > 0 && (tops[i] ?? 0) < (tops[i - 1] ?? 0)
			? null
			: (selectors.find((selector) => one.matches(selector)) ?? null)
	);
}
