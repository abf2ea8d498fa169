import { expect } from 'vitest';
import { answerByKeyboard, openTask, wrongAnswers } from './keyboard.ts';
import { test } from './site-test.ts';

test('a store that never answers is told, and practice goes on without it', async ({
	openPage
}) => {
	const page = await openPage({ own: true });
	await page.clock.install();
	// What a browser gives whose store stands still: a request that nobody hears of again.
	await page.addInitScript(() => {
		const { open } = IDBFactory.prototype;
		IDBFactory.prototype.open = function (name) {
			return Object.assign(open.call(this, name), { addEventListener() {} });
		};
	});
	await page.goto('/practice/?task=RL1-007S-3W');
	const task = await openTask(page);
	await answerByKeyboard(page, wrongAnswers(task));
	await page.locator('.stamp', { hasText: 'REWORK' }).waitFor();
	const sentence = page.getByText('The store on this device does not answer');
	await expect
		.poll(async () => {
			await page.clock.fastForward(9000);
			return sentence.isVisible();
		})
		.toBe(true);
});
