import type { Page } from 'playwright-core';
import { openTask, rightAnswers, wrongAnswers } from '../../browser/keyboard.ts';

/** Fills in the open task, right or wrong, and leaves the focus where Enter checks it. */
export async function fillIn(page: Page, right: boolean): Promise<void> {
	const task = await openTask(page);
	for (const [key, answer] of Object.entries(right ? rightAnswers(task) : wrongAnswers(task))) {
		const choice = page.locator(`fieldset[data-answer-choice="${key}"] input`);
		if ((await choice.count()) > 0) {
			const chosen = page.locator(`[data-answer-choice="${key}"] input[value="${answer}"]`);
			await chosen.check({ force: true });
			await chosen.focus();
		} else {
			await page.locator(`[data-answer="${key}"]`).fill(answer);
			await page.locator(`[data-answer="${key}"]`).focus();
		}
	}
}

/** Goes on to the next task of the run, by a click unless it is said how. */
export async function goOn(
	page: Page,
	press: () => Promise<void> = () => page.locator('[data-next]').click()
): Promise<void> {
	const { number } = await openTask(page);
	await press();
	await page.waitForURL((url) => url.searchParams.get('task') !== number);
	await page.locator('#question').waitFor();
}
