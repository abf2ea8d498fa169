import { expect } from 'vitest';
import { taskFromNumber } from '../../src/lib/engine/tasks/task.ts';
import { looks, measured } from '../sheets/measured.ts';
import { test } from './site-test.ts';

// `npm run sheets` looks at every family; these are the ones with the most to offer.
test('three slips to choose among leave the metal’s answer in view', async ({ openPage }) => {
	for (const { id, visitor } of looks) {
		if (id === 'phone') continue;
		const page = await openPage(visitor);
		for (const number of ['BR1-0009-65', 'PN2-0002-59']) {
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
	await page.goto('/practice/?task=BR1-0009-65');
	await page.emulateMedia({ forcedColors: 'active' });
	const wide = await page
		.locator('.face.full')
		.evaluate((face) => parseFloat(getComputedStyle(face, '::before').borderLeftWidth));
	expect(wide).toBeGreaterThan(0);
});

test('four wrong answers leave the metal in view: two are told, the others named', async ({
	openPage
}) => {
	const page = await openPage({ viewport: { width: 1280, height: 800 } });
	await page.goto('/practice/?task=SC3-0007-42');
	const fields = page.locator('[data-answer]');
	await fields.first().waitFor();
	for (const field of await fields.all()) await field.fill('0.777');
	await page.locator('[data-answer-choice] input').last().focus();
	await page.keyboard.press('Space');
	await page.keyboard.press('Enter');
	await page.getByText('Not right yet: Minimum height, Maximum height.').waitFor();
	const caption = page.locator('.metal figcaption').first();
	await caption.waitFor();
	const foot = await page.locator('.foot').boundingBox();
	const box = await caption.boundingBox();
	expect((box?.y ?? Infinity) + (box?.height ?? 0)).toBeLessThanOrEqual(foot?.y ?? 0);
	const drawn = await page.locator('.metal svg').first().boundingBox();
	expect(drawn?.height).toBeGreaterThan(40);
});

const phone = { viewport: { width: 360, height: 740 } };

test('on a phone a verdict on two answers stands in whole lines under its stamp', async ({
	openPage
}) => {
	const page = await openPage(phone);
	await page.goto('/practice/?task=RL1-001C-8N');
	const fields = page.locator('[data-answer]');
	await fields.first().waitFor();
	for (const field of await fields.all()) await field.fill('97.7');
	await page.keyboard.press('Enter');
	const told = page.locator('.lines .line p').first();
	await page.locator('.offers button').first().waitFor();
	const words = await told.locator('span').boundingBox();
	const stamp = await page.locator('.stamp').boundingBox();
	expect(words?.width).toBeGreaterThan(280);
	expect(words?.y).toBeGreaterThan((stamp?.y ?? Infinity) + (stamp?.height ?? 0) - 8);
});

test('on a phone the open step keeps its place when it is checked', async ({ openPage }) => {
	const page = await openPage(phone);
	await page.goto('/practice/?task=LR3-002D-60');
	await page.locator('[data-answer]').first().waitFor();
	await page.getByRole('button', { name: 'Step by step' }).click();
	const open = page.locator('li.open');
	await open.waitFor();
	const place = () =>
		open.evaluate((step) => Math.round(step.getBoundingClientRect().top + window.scrollY));
	const before = await place();
	await open.locator('[data-answer]').fill('0.777');
	await page.keyboard.press('Enter');
	await open.getByText('That is not it.').waitFor();
	expect(await place()).toBe(before);
});

test('on a laptop three answers and six leave the foot in view, and the metal stands side by side', async ({
	openPage
}) => {
	const page = await openPage({ viewport: { width: 1280, height: 800 } });
	const typed = {
		'RL3-0005-80': ['0.1012', '0.3590', '4/8'],
		'PN1-0003-53': ['0.15', '5/32', '0.3244', '4/8', 'No. 21', '36'],
		'LR2-Q443-6E': ['11', '0.8250']
	};
	for (const [number, answers] of Object.entries(typed)) {
		await page.goto(`/practice/?task=${number}`);
		const fields = page.locator('[data-answer]');
		await fields.first().waitFor();
		for (const [i, answer] of answers.entries()) await fields.nth(i).fill(answer);
		await page.keyboard.press('Enter');
		await page.locator('.look svg').waitFor();
		const foot = await page.locator('.foot').boundingBox();
		expect((foot?.y ?? Infinity) + (foot?.height ?? 0), number).toBeLessThanOrEqual(800);
		const [made, wanted] = await page
			.locator('.metal > div')
			.evaluateAll((all) => all.map((one) => one.getBoundingClientRect()));
		expect(made?.top, number).toBe(wanted?.top);
		expect(made?.height, number).toBe(wanted?.height);
		expect(made?.height, number).toBeGreaterThanOrEqual(number.startsWith('LR') ? 36 : 64);
		expect(made?.width, number).toBeGreaterThan(240);
	}
});

test('on a laptop what may be typed says in which of several fields', async ({ openPage }) => {
	const page = await openPage({ viewport: { width: 1280, height: 800 } });
	await page.goto('/practice/?task=LR2-Q443-6E');
	await page.locator('[data-answer="pitch"]').focus();
	await page.getByText('Pitch A fraction, decimal, mm, or the sum.').waitFor();
	await page.locator('[data-answer]').first().focus();
	await page.getByText('Rivets A whole number.').waitFor();
});
