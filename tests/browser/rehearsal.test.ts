import { topicIds } from '../../src/lib/engine/families/topics.ts';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { type KeptQuestion, reopened } from '../../src/lib/engine/sets/kept-question.ts';
import { severalSlips } from '../../src/lib/engine/sets/options.ts';
import { optionTexts, type Question } from '../../src/lib/engine/sets/rehearsal.ts';
import { stepsOf } from '../../src/lib/engine/tasks/task.ts';
import { isSound, looks, overTheEdge } from './axe.ts';
import { logged } from './dump.ts';
import { tabTo, whyNow } from './keyboard.ts';
import { test } from './site-test.ts';

/** The questions of the rehearsal that this page keeps. */
async function asked(page: Page): Promise<Question[]> {
	const kept = await page.evaluate(() => {
		const key = Object.keys(localStorage).find((one) => one.startsWith('bucktail.rehearsal.'));
		return key === undefined ? null : localStorage.getItem(key);
	});
	const { questions } = JSON.parse(kept ?? '') as { questions: KeptQuestion[] };
	const drawn = await Promise.all(questions.map(reopened));
	return drawn.filter((question) => question !== null);
}

async function start(page: Page, count: number): Promise<Question[]> {
	await page.goto('/rehearsal/');
	await page.getByLabel('Questions').fill(String(count));
	await page.getByRole('button', { name: 'Start the rehearsal' }).click();
	await page.locator('#question').waitFor();
	return asked(page);
}

function choice(page: Page, place: number) {
	return page.locator('article input[type="radio"]').nth(place);
}

function wrongPlace({ right, options }: Question): number {
	return (right + 1) % options.length;
}

async function atQuestion(page: Page, n: number, count: number): Promise<void> {
	await page.getByText(`Question ${n} of ${count}`, { exact: true }).waitFor();
}

test('a whole rehearsal by keyboard: its misses are in the log, and in the plan the next day', async ({
	openPage
}) => {
	const page = await openPage({ time: '2026-12-01T18:00:00' });
	await page.goto('/rehearsal/');
	await tabTo(page, 'input[type="number"]');
	await page.keyboard.press('ControlOrMeta+a');
	await page.keyboard.type('10');
	await tabTo(page, 'form button');
	await page.keyboard.press('Enter');
	await page.locator('#question').waitFor();
	const questions = await asked(page);
	for (const [i, question] of questions.entries()) {
		await atQuestion(page, i + 1, 10);
		await expect.poll(() => page.locator('#question:focus').count()).toBe(1);
		await page.clock.fastForward(30_000);
		const place = i % 3 === 1 ? wrongPlace(question) : question.right;
		await tabTo(page, 'article input[type="radio"]');
		await page.keyboard.press('Space');
		for (let n = 0; n < place; n++) await page.keyboard.press('ArrowDown');
		expect(await choice(page, place).isChecked()).toBe(true);
		await page.keyboard.press('Enter');
	}
	await page.getByRole('heading', { name: '7 of 10 right' }).waitFor();
	await expect.poll(() => page.locator('#report:focus').count()).toBe(1);
	await page.getByText(/That is 70 percent\.\s+You used \d minutes of 20\./).waitFor();
	await page.getByText('What went wrong is in your plan now').waitFor();
	expect(await page.locator('tbody tr').count()).toBe(topicIds.length);

	const attempts = await logged(page, 'attempt');
	expect(attempts.map(({ task }) => task)).toEqual(questions.map(({ task }) => task.number));
	for (const [i, attempt] of attempts.entries()) {
		const question = questions[i];
		expect(attempt.source).toBe('rehearsal');
		expect(attempt.seconds).toBeGreaterThanOrEqual(30);
		expect(attempt.seconds).toBeLessThan(60);
		const wrong = attempt.skills.filter(({ result }) => result === 'wrong');
		expect(wrong.length > 0).toBe(i % 3 === 1);
		if (i % 3 !== 1 || !question) continue;
		const { cause } = question.options[wrongPlace(question)] ?? {};
		if (cause?.kind === 'slip') expect(wrong.map(({ slip }) => slip)).toEqual([...cause.slips]);
	}

	await page.clock.fastForward(24 * 3_600_000);
	await page.goto('/');
	await page.getByRole('button', { name: 'Start today’s tasks' }).click();
	expect(await whyNow(page)).toMatch(/You missed “.+” yesterday\./);
	expect((await logged(page, 'attempt')).length).toBe(10);
});

test('it goes on where it was after the tab was closed, by the clock', async ({ openPage }) => {
	const first = await openPage({ time: '2026-12-01T18:00:00' });
	const context = first.context();
	const questions = await start(first, 12);
	for (const place of [0, 1, 2]) {
		await choice(first, place).check();
		if (place === 1) await first.getByRole('button', { name: 'Mark for later' }).click();
		await first.getByRole('button', { name: 'Next', exact: true }).click();
	}
	await atQuestion(first, 4, 12);
	await first.close();
	const second = await context.newPage();
	await second.clock.fastForward(6 * 60_000);
	await second.goto('/rehearsal/');
	await second.getByRole('button', { name: 'Go on: 3 of 12, 18 minutes left' }).click();
	await atQuestion(second, 4, 12);
	const texts = (await asked(second)).map(({ task }) => task.number);
	expect(texts).toEqual(questions.map(({ task }) => task.number));
	await second.getByRole('button', { name: 'Question 2: answered, marked for later' }).click();
	await atQuestion(second, 2, 12);
	expect(await choice(second, 1).isChecked()).toBe(true);
	await second.getByRole('button', { name: 'Marked for later', exact: true }).click();
	await second.getByText('3 of 12 answered.', { exact: true }).waitFor();
});

test('when the time is over it is handed in, once, and unanswered questions show nothing', async ({
	openPage
}) => {
	const page = await openPage({ time: '2026-12-01T18:00:00' });
	const [question] = await start(page, 10);
	await choice(page, question?.right ?? 0).check();
	await page.clock.fastForward('19:30');
	await page.getByText(/^\d\d seconds left$/).waitFor();
	await page.clock.fastForward('00:31');
	await page.getByRole('heading', { name: '1 of 10 right' }).waitFor();
	await page.getByText('9 questions have no answer. The time of 20 minutes was used up.').waitFor();
	await page.getByText('Your answers are in your log').waitFor();
	await page.reload();
	await page.getByText('1 December: 1 of 10 right.').waitFor();
	const attempts = await logged(page, 'attempt');
	expect(attempts.length).toBe(10);
	expect(attempts.filter(({ skills }) => skills.length > 0).length).toBe(1);
	await page.getByRole('button', { name: 'Look at it again' }).click();
	await page.getByRole('heading', { name: '1 of 10 right' }).waitFor();
});

test('closed when the time runs out, it is in the log the next time', async ({ openPage }) => {
	const page = await openPage({ time: '2026-12-01T18:00:00' });
	const context = page.context();
	const [question] = await start(page, 10);
	await choice(page, question ? wrongPlace(question) : 0).check();
	await page.close();
	const later = await context.newPage();
	await later.clock.fastForward(3 * 24 * 3_600_000);
	await later.goto('/rehearsal/');
	await later.getByRole('heading', { name: '0 of 10 right' }).waitFor();
	await later.getByText('What went wrong is in your plan now').waitFor();
	const attempts = await logged(later, 'attempt');
	expect(attempts.length).toBe(10);
	expect(new Set(attempts.map(({ day }) => day))).toEqual(new Set(['2026-12-01']));
});

test('two tabs hold one rehearsal', async ({ openPage }) => {
	const one = await openPage();
	const questions = await start(one, 10);
	const two = await one.context().newPage();
	await two.goto('/rehearsal/');
	await two.getByRole('button', { name: /^Go on: 0 of 10/ }).click();
	await choice(one, questions[0]?.right ?? 0).check();
	await two.getByText('1 of 10 answered.', { exact: true }).waitFor();
	expect(await choice(two, questions[0]?.right ?? 0).isChecked()).toBe(true);
	await one.locator('aside').getByRole('button', { name: 'Hand in' }).click();
	await one.locator('dialog').getByRole('button', { name: 'Hand in' }).click();
	await two.getByRole('heading', { name: '1 of 10 right' }).waitFor();
	await two.getByText('Your answers are in your log').waitFor();
	expect((await logged(two, 'attempt')).length).toBe(10);
});

test('every question is worked, with the option’s slip and more of the kind', async ({
	openPage
}) => {
	const page = await openPage();
	const questions = await start(page, 10);
	for (const question of questions) {
		await choice(page, wrongPlace(question)).check();
		await page.locator('article form button:not([type="button"])').click();
	}
	await page.getByRole('heading', { name: '0 of 10 right' }).waitFor();
	const rows = page.locator('ul > li');
	expect(await rows.count()).toBe(10);
	for (const [i, question] of questions.entries()) {
		const { cause } = question.options[wrongPlace(question)] ?? {};
		const { slips } = question.task.method;
		const row = (await rows.nth(i).textContent()) ?? '';
		expect(row).toContain('Rework');
		const led = cause?.slips ?? [];
		if (led.length >= severalSlips) expect(row).toContain('Several slips lead here');
		else for (const id of led) expect(row).toContain(slips[id]?.says);
	}
	await rows.nth(0).locator('summary').click();
	const steps = rows.nth(0).getByRole('list', { name: 'Working' }).getByRole('listitem');
	await steps.first().waitFor();
	expect(await steps.count()).toBe(questions[0] && stepsOf(questions[0].task).length);
	await rows.nth(0).locator('svg.figure').waitFor();
	const link = rows.nth(0).getByRole('link', { name: 'Practise this kind' });
	const wanted = questions[0]?.task.number ?? '';
	await link.click();
	await page.waitForURL(/[?&]task=/);
	const opened = new URL(page.url()).searchParams.get('task') ?? '';
	expect(opened.slice(0, 3)).toBe(wanted.slice(0, 3));
	expect(opened).not.toBe(wanted);
});

test('nothing in it helps: no working, no hint, no rule, no verdict', async ({ openPage }) => {
	const page = await openPage();
	const questions = await start(page, 10);
	for (const question of questions.slice(0, 9)) {
		await choice(page, wrongPlace(question)).check();
		const shown = await page.locator('main').textContent();
		for (const { says } of Object.values(question.task.method.slips)) {
			expect(shown).not.toContain(says);
		}
		expect(await page.locator('math, .stamp, main a, details').count()).toBe(0);
		await page.getByRole('button', { name: 'Next', exact: true }).click();
	}
});

test('lengths switch to millimetres without losing a choice', async ({ openPage }) => {
	const page = await openPage();
	const questions = await start(page, 10);
	const at = questions.findIndex((question) => optionTexts(question, 'in')[2]?.endsWith(' in'));
	await page.getByRole('button', { name: `Question ${at + 1}:` }).click();
	await choice(page, 2).check();
	await page.getByLabel('mm').check();
	await expect
		.poll(() => page.locator('article fieldset label').nth(2).textContent())
		.toMatch(/ mm$/);
	expect(await choice(page, 2).isChecked()).toBe(true);
});

test('a length that cannot be used is said in one sentence, and nothing starts', async ({
	openPage
}) => {
	const page = await openPage();
	await page.goto('/rehearsal/');
	await page.getByLabel('Questions').fill('9');
	expect(await page.getByLabel('Minutes').inputValue()).toBe('18');
	await page.getByRole('button', { name: 'Start the rehearsal' }).click();
	await page.getByText('Choose from 10 to 60 questions.').waitFor();
	await page.getByLabel('Questions').fill('20');
	await page.getByLabel('Minutes').fill('2');
	await page.getByRole('button', { name: 'Start the rehearsal' }).click();
	await page.getByText('Choose from 5 to 240 minutes.').waitFor();
	await page.getByLabel('Minutes').fill('25');
	await page.getByRole('button', { name: 'Start the rehearsal' }).click();
	await page.getByText('25 minutes left', { exact: true }).waitFor();
	await atQuestion(page, 1, 20);
});

test('no stage breaks a rule that a program can check, or is wider than the page', async ({
	openPage
}) => {
	const page = await openPage(looks[1]);
	await page.goto('/rehearsal/');
	await page.getByLabel('Questions').fill('5');
	await page.getByRole('button', { name: 'Start the rehearsal' }).click();
	await page.getByText('Choose from 10 to 60 questions.').waitFor();
	await isSound(page, 'set-up');
	const questions = await start(page, 15);
	for (const [i, question] of questions.entries()) {
		await atQuestion(page, i + 1, 15);
		expect(await overTheEdge(page), question.task.number).toBeLessThanOrEqual(0);
		if (i % 4 !== 3) await choice(page, i % 3).check();
		if (i === 2) await page.getByRole('button', { name: 'Mark for later' }).click();
		if (i === 3) await isSound(page, 'a question');
		await page.locator('article form button:not([type="button"])').click();
	}
	await page.locator('dialog[open]').waitFor();
	await isSound(page, 'handing in');
	await page.getByRole('button', { name: 'Go on working' }).click();
	await page.reload();
	await page.getByRole('button', { name: /^Go on:/ }).waitFor();
	await isSound(page, 'the offer');
	await page.getByRole('button', { name: 'Hand it in as it is' }).click();
	await page.locator('#report').waitFor();
	for (const place of [0, 1, 2, 3]) await page.locator('summary').nth(place).click();
	await isSound(page, 'the report');
});
