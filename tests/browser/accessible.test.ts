import { describe, expect } from 'vitest';
import { looks, violations } from './axe.ts';
import { answerByKeyboard, openTask, wrongAnswers } from './keyboard.ts';
import { test } from './site-test.ts';

describe.each(looks)('$colorScheme, $viewport.width px', (look) => {
	test('no page or state breaks a rule that a program can check', async ({ openPage }) => {
		const page = await openPage({ ...look, bypassCSP: true });
		for (const path of ['/', '/rules/']) {
			await page.goto(path);
			await page.locator('h1').waitFor();
			expect(await violations(page), path).toEqual([]);
		}
		await page.goto('/practice/?task=SC3-0004-2J');
		const task = await openTask(page);
		expect(await violations(page), 'a task').toEqual([]);
		await answerByKeyboard(page, wrongAnswers(task));
		await page.locator('.stamp').waitFor();
		expect(await violations(page), 'rework').toEqual([]);
		await page.getByRole('button', { name: 'Show the working' }).click();
		expect(await violations(page), 'the working').toEqual([]);
	});
});
