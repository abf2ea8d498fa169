import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { readHandInTexts } from '../../src/lib/exchange/hand-in-file.ts';
import { readSetLink } from '../../src/lib/exchange/set-link.ts';
import { openSet, type SetTask } from '../../src/lib/engine/sets/open-set.ts';
import { rightEntries } from '../engine/sets/hand-ins.ts';
import { looks, overTheEdge, violations } from './axe.ts';
import { logged } from './dump.ts';
import { untilKept, untilQuiet } from './settled.ts';
import { test } from './site-test.ts';

const [desk, phone] = looks;

async function isSound(page: Page, what: string): Promise<void> {
	expect(await violations(page), what).toEqual([]);
	expect(await overTheEdge(page), what).toBeLessThanOrEqual(0);
}

function numbers(page: Page): Promise<string[]> {
	return page.locator('[data-row] small').allTextContents();
}

/** Composes twelve tasks, moves and swaps some, and gives the link. */
async function compose(page: Page): Promise<string> {
	await page.goto('/');
	await page.getByRole('link', { name: 'Make a set for a class' }).click();
	await page.getByRole('link', { name: 'Compose a set' }).click();
	await page.getByText('Give the set a title.').waitFor();
	await page.getByLabel('Title').fill('Section B, week 6');
	await page.getByRole('button', { name: 'Deal them' }).click();
	const rows = page.locator('[data-row]');
	await expect.poll(() => rows.count()).toBe(12);
	const [first = '', second = '', third = ''] = await numbers(page);
	await rows.nth(0).focus();
	await page.keyboard.press('Alt+ArrowDown');
	await expect.poll(() => numbers(page)).toEqual(expect.arrayContaining([first]));
	expect((await numbers(page)).slice(0, 3)).toEqual([second, first, third]);
	expect(await rows.nth(1).evaluate((row) => row === document.activeElement)).toBe(true);
	await page.keyboard.press('n');
	await expect.poll(async () => (await numbers(page))[1]).not.toBe(first);
	// The balloon of the third task is dragged onto the first one's row.
	const from = await page.locator('.balloon').nth(2).boundingBox();
	const to = await page.locator('.balloon').nth(0).boundingBox();
	if (!from || !to) throw new Error('no balloons');
	await page.mouse.move(from.x + 9, from.y + 9);
	await page.mouse.down();
	await page.mouse.move(to.x + 9, to.y + 9, { steps: 6 });
	await page.mouse.up();
	expect((await numbers(page))[0]).toBe(third);
	await rows.nth(0).click();
	await page.getByLabel('All of it').fill('10');
	await page.getByLabel('All of it').press('Tab');
	await page.getByLabel('not allowed').check();
	await page.getByLabel('Due', { exact: true }).fill('2026-12-04');
	await page.getByLabel('Note to the student').fill('Show the <b>run</b> first.');
	await isSound(page, 'the composer');
	// The page is left in the very press: what was to be saved is saved by the next one.
	const link = await page.getByLabel('Link to this set').inputValue();
	await page.getByRole('button', { name: 'Save', exact: true }).evaluate((button) => {
		if (button instanceof HTMLElement) button.click();
		location.href = '/sets/';
	});
	await page.getByText('12 tasks, ').waitFor();
	await page.getByRole('link', { name: 'Hand out or edit a copy' }).click();
	await page.getByRole('button', { name: 'Saved', exact: true }).waitFor();
	await page.getByRole('button', { name: 'Show it on the board' }).first().click();
	await page.getByRole('heading', { level: 2, name: 'Section B, week 6' }).waitFor();
	await page.keyboard.press('Escape');
	expect(await page.getByLabel('Link to this set').inputValue()).toBe(link);
	return link;
}

/** Answers a task; wrong in its last answer alone, so that all of it can be read. */
async function answer(page: Page, { task, question }: SetTask, right: boolean): Promise<void> {
	if (question) throw new Error('no options were asked for');
	const entries = Object.entries(rightEntries({ task } as SetTask));
	for (const [i, [key, text]] of entries.entries()) {
		const choice = page.locator(`[data-answer-choice="${key}"]`);
		if (await choice.count()) await choice.getByLabel(text, { exact: true }).check();
		else
			await page
				.locator(`[data-answer="${key}"]`)
				.fill(right || i < entries.length - 1 ? text : '77');
	}
}

test('a set is composed, sent, worked on a phone, gone over and handed in', async ({
	openPage
}) => {
	const teacher = await openPage({ ...desk });
	const link = await compose(teacher);
	const [saved] = await logged(teacher, 'set');
	const reading = await readSetLink(link);
	if (!reading.ok) throw new Error(reading.sentence);
	expect(saved?.set).toEqual(JSON.parse(JSON.stringify(reading.set)));
	expect(reading.set).toMatchObject({ help: false, due: '2026-12-04', seed: 'Section B, week 6' });
	const open = await openSet(reading.set);
	expect(open.tasks[0]?.marks.reduce((sum, one) => sum + one, 0)).toBe(10);

	const page = await openPage({ ...phone, own: true });
	await page.goto(link);
	await page.getByText('Show the <b>run</b> first.').waitFor();
	await page.getByText('a promise recorded, not a lock').waitFor();
	await isSound(page, 'a set that was sent');
	await page.getByLabel('Your student code').fill('<i>B05</i>');
	await page.getByRole('button', { name: 'Start' }).click();
	await page.getByText('starts with a letter or digit').waitFor();
	await page.getByLabel('Your student code').fill(' b05 ');
	await page.getByRole('button', { name: 'Start' }).click();

	const tasks = open.for('B05');
	const next = page.locator('[data-next]');
	await page.getByText('1 of 12').waitFor();
	await untilKept(page);
	// What is still on its way would be told as a fault.
	await untilQuiet(page);
	await page.context().setOffline(true);
	for (const own of tasks.slice(0, 10)) {
		await page.getByText(`${own.place} of 12`).waitFor();
		await answer(page, own, own.place !== 2);
		await next.click();
	}
	await page.getByText('11 of 12').waitFor();
	expect(await page.getByRole('button', { name: /Check|Open step|working/ }).count()).toBe(0);
	const eleventh = tasks[10];
	if (eleventh) await answer(page, eleventh, true);
	await isSound(page, 'a task of the set');
	await page.context().setOffline(false);
	// At once: what was typed last is not in the log yet.
	await page.reload();
	await page.getByText('12 of 12').waitFor();
	await page.getByRole('button', { name: /^Task 11: answered/ }).click();
	await expect.poll(() => page.locator('[data-answer]').first().inputValue()).not.toBe('');

	await page.getByRole('button', { name: 'Look it over' }).click();
	await page.getByText(/1 task lacks an answer/).waitFor();
	await isSound(page, 'the look over it');
	await page.getByLabel(/I worked this set without help/).check();
	await page.getByRole('button', { name: 'Hand in' }).click();
	await page.getByText('with your promise that you worked without help').waitFor();
	const text = page.getByLabel('Code text of your hand-in');
	await isSound(page, 'the hand-in');
	const [handIn] = await readHandInTexts(await text.inputValue());
	if (!handIn?.ok) throw new Error(handIn?.sentence);
	const { handIn: sent } = handIn;
	expect(sent).toMatchObject({
		hash: open.hash,
		code: 'B05',
		version: 1,
		promised: true,
		name: ''
	});
	expect(sent.answers.map(({ entries }) => Object.keys(entries).length > 0)).toEqual(
		tasks.map(({ place }) => place < 12)
	);
	expect(sent.answers[0]?.opened).toEqual([]);
	expect(sent.answers[10]?.entries).toEqual(eleventh && rightEntries(eleventh));

	await page.getByRole('button', { name: 'See how it came out' }).click();
	await page.getByText('10 of 10 marks').waitFor();
	await isSound(page, 'how it came out');
	await page.getByRole('button', { name: 'Back to the hand-in' }).click();
	await page.getByRole('button', { name: 'Change answers' }).click();
	await page.getByRole('button', { name: 'Look it over' }).click();
	await page.getByRole('button', { name: 'Hand in version 2' }).click();
	await page.getByText(/Version 2 of/).waitFor();
	const [again] = await readHandInTexts(await text.inputValue());
	expect(again?.ok && again.handIn.version).toBe(2);
	expect(again?.ok && again.handIn.answers[0]?.opened.length).toBeGreaterThan(0);
	expect(again?.ok && again.handIn.device).toBe(sent.device);
	await expect.poll(async () => (await logged(page, 'attempt')).length).toBe(11);

	await page.goto(link.replace(/.$/, (letter) => (letter === 'A' ? 'B' : 'A')));
	await page.getByText('damaged or cut short: one character off is enough').waitFor();
	await isSound(page, 'a damaged link');
	await page.goto('/sets/');
	await page.getByText('as B05, handed in, version 2').waitFor();
	await page.getByRole('link', { name: `Section B, week 6 ${open.hash}` }).waitFor();
	await isSound(page, 'the sets of a student');
});
