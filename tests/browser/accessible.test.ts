import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { answerByKeyboard, openTask, wrongAnswers } from './keyboard.ts';
import { test } from './site-test.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core'), 'utf8');

interface Found {
	readonly violations: readonly { id: string; nodes: readonly { html: string }[] }[];
}

/** What axe finds against WCAG 2.2 A and AA on the page as it is. */
async function violations(page: Page): Promise<string[]> {
	await page.evaluate(axeSource);
	const { violations: found } = await page.evaluate<Found>(
		`axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] })`
	);
	return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 120)}`));
}

const looks = [
	{ colorScheme: 'light', viewport: { width: 1280, height: 900 } },
	{ colorScheme: 'dark', viewport: { width: 360, height: 740 } }
] as const;

describe.each(looks)('$colorScheme, $viewport.width px', (look) => {
	test('no page or state breaks a rule that a program can check', async ({ openPage }) => {
		const page = await openPage({ ...look, bypassCSP: true });
		for (const path of ['/', '/rules/']) {
			await page.goto(path);
			await page.locator('h1').waitFor();
			expect(await violations(page), path).toEqual([]);
		}
		await page.goto('/practice/?task=SC3-0004-1M');
		const task = await openTask(page);
		expect(await violations(page), 'a task').toEqual([]);
		await answerByKeyboard(page, wrongAnswers(task));
		await page.locator('.stamp').waitFor();
		expect(await violations(page), 'rework').toEqual([]);
		await page.getByRole('button', { name: 'Show the working' }).click();
		expect(await violations(page), 'the working').toEqual([]);
	});
});
