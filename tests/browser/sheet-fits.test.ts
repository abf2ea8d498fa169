import { expect } from 'vitest';
import { taskFromNumber } from '../../src/lib/engine/tasks/task.ts';
import { looks, measured } from '../sheets/measured.ts';
import { test } from './site-test.ts';

// `npm run sheets` looks at every family; these are the ones with the most to offer.
test('three slips to choose among leave the metal’s answer in view', async ({ openPage }) => {
	for (const { id, visitor } of looks) {
		if (id === 'phone') continue;
		const page = await openPage(visitor);
		for (const number of ['BR1-0007-4H', 'PN2-0007-4R']) {
			const { after } = await measured(page, await taskFromNumber(number));
			expect(after, `${number}, ${id}`).toEqual([]);
			expect(await page.locator('.offers button').count(), number).toBe(3);
		}
	}
});

test('a task that cannot be opened is told in the frame of a sheet', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/practice/?task=RL1-0000-00');
	await page.getByRole('heading', { name: 'This task cannot be opened' }).waitFor();
	expect(await page.locator('.sheet > .frame a.button').textContent()).toBe('Choose a topic');
});

test('colours of one’s own keep the line between words and drawing', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/practice/?task=BR1-0007-4H');
	await page.emulateMedia({ forcedColors: 'active' });
	const wide = await page
		.locator('.face.full')
		.evaluate((face) => parseFloat(getComputedStyle(face, '::before').borderLeftWidth));
	expect(wide).toBeGreaterThan(0);
});
