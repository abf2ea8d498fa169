import { isSound } from './axe.ts';
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
	await page.goto('/practice/?task=SC3-0003-3M');
	const task = await openTask(page);
	await isSound(page, 'a task');
	await answerByKeyboard(page, wrongAnswers(task));
	await page.locator('.stamp').waitFor();
	await isSound(page, 'rework');
	await page.getByRole('button', { name: 'Show the working' }).click();
	await isSound(page, 'the working');
});
