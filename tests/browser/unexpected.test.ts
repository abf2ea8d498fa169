import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { writeQuestion } from '../../src/lib/app/ask/ask-link.ts';
import { isSound, looks } from './axe.ts';
import { answerByKeyboard, openTask, wrongAnswers } from './keyboard.ts';
import { plantInFigure, plantThrow, takeAway } from './planted.ts';
import { learner, openWithLog, someLog } from './seeded-log.ts';
import { untilQuiet } from './settled.ts';
import { test as siteTest } from './site-test.ts';

/** What a planted fault makes a page log or throw. */
const planted =
	/planted|draw is not a function|404|dynamically imported|could not be loaded|preload/;

/** A page that meets its fault again on its way out may tell of it after the test has looked. */
const test = siteTest.extend<{ faults: string[] }>({
	faults: async ({}, use) => {
		const faults: string[] = [];
		await use(faults);
		expect(faults.filter((fault) => !planted.test(fault))).toEqual([]);
	}
});

const mark = 'src/lib/engine/marking/mark.ts';
const noting = 'src/lib/app/practice/noting.ts';
const sentences = 'src/lib/engine/methods/rivet-length.ts?told';
const rivetLength = 'src/lib/engine/families/rivets/rivet-length.ts';
const task = 'RL1-00C8-8D';

/** A visitor who does not get every file as it is in the site. */
const altered = { altered: true } as const;

/** The one sentence on top of the page. */
const told = (page: Page) => page.getByRole('alert');

/** Opens the next task, which is another one and can be answered, or is shown worked. */
async function goOn(page: Page): Promise<void> {
	const before = page.url();
	await page.getByRole('button', { name: 'Next task' }).click();
	await page.waitForURL((url) => url.href !== before);
	await page.locator('[data-answer], [data-answer-choice], [data-next]').first().waitFor();
}

/** The same, past any further task of the family that cannot be drawn. */
async function goPast(page: Page): Promise<void> {
	const field = page.locator('[data-answer], [data-answer-choice]').first();
	for (let presses = 0; presses < 10 && !(await field.isVisible()); presses++) {
		const before = page.url();
		await page.getByRole('button', { name: 'Next task' }).click();
		await page.waitForURL((url) => url.href !== before);
		await field.or(page.getByText('Something went wrong in task').first()).first().waitFor();
	}
	expect(await field.isVisible()).toBe(true);
}

describe('a fault in marking', () => {
	test('is told with the number, what was typed stays, and the run goes on', async ({
		openPage,
		faults
	}) => {
		const page = await openPage({ ...looks[1], ...altered });
		await plantThrow(page, mark);
		await page.goto('/practice/');
		const { number } = await openTask(page);
		await answerByKeyboard(page, wrongAnswers(await openTask(page)));
		await told(page).getByText(`Something went wrong in task ${number}: `).waitFor();
		await expect.poll(() => told(page).evaluate(isInSight)).toBe(true);
		await isSound(page, 'told');
		const fields = page.locator('[data-answer]');
		const typed = await fields.evaluateAll(valuesOf);
		await goOn(page);
		expect(await told(page).textContent()).toBe('');
		await page.goBack();
		await expect.poll(async () => (await openTask(page)).number).toBe(number);
		expect(await fields.evaluateAll(valuesOf)).toEqual(typed);
		await page.goto('about:blank');
		expect(faults.splice(0)).toEqual(['threw: planted']);
	});
});

test.for(['src/lib/ui/sheet/Verdict.svelte', 'src/lib/ui/sheet/Working.svelte'])(
	'a fault in %s leaves the rest of the sheet',
	async (part, { openPage, faults }) => {
		const page = await openPage(altered);
		await plantThrow(page, part);
		await page.goto(`/practice/?task=${task}`);
		await openTask(page);
		const field = page.locator('[data-answer="length"]');
		await page.locator('[data-answer="needed"]').fill('.19');
		await field.fill('3/16');
		await field.press('Enter');
		await page.getByText('Saved on this device.').waitFor();
		await page.getByRole('button', { name: 'Show the working' }).click();
		await told(page).getByText(`Something went wrong in task ${task}: `).waitFor();
		expect(await field.inputValue()).toBe('3/16');
		await page.reload();
		await expect.poll(() => field.inputValue()).toBe('3/16');
		await page.goto('about:blank');
		for (const fault of faults.splice(0)) expect(fault).toContain('planted');
	}
);

test('a sheet that cannot be shown says so, and the run goes on', async ({ openPage, faults }) => {
	const page = await openPage(altered);
	await plantInFigure(page, rivetLength);
	await page.goto('/practice/?task=SC3-0003-4J');
	await openTask(page);
	await page.getByLabel('Task number').fill(task);
	await page.getByLabel('Task number').press('Enter');
	await page.getByRole('heading', { name: 'This task cannot be opened' }).waitFor();
	await told(page).getByText(`Something went wrong in task ${task}: `).waitFor();
	await page.getByRole('button', { name: 'Task 1: ' }).click();
	await page.waitForURL('**/?task=SC3-0003-4J');
	await page.locator('[data-answer], [data-answer-choice]').first().waitFor();
	// The next task, which is the one that cannot be shown, is drawn ahead once the page is idle.
	await untilQuiet(page);
	expect(await told(page).textContent()).toBe('');
	await page.goto('about:blank');
	for (const fault of faults.splice(0)) expect(fault).toContain('planted');
});

test('a task that cannot be drawn is told with its number, and the run goes on', async ({
	openPage,
	faults
}) => {
	const page = await openPage(altered);
	await plantThrow(page, rivetLength);
	await page.goto('/practice/?task=SC3-0003-4J');
	await openTask(page);
	// As a run that holds one: what a typed number finds out at once.
	await page.getByLabel('Task number').fill(task);
	await page.getByLabel('Task number').press('Enter');
	await page.getByText(`Something went wrong in task ${task}: `).waitFor();
	expect((await openTask(page)).number).toBe('SC3-0003-4J');
	await page.goto('/rules/');
	await page.evaluate((number) => {
		const [key = '', text = ''] =
			Object.entries(localStorage).find(([name]) => name.startsWith('bucktail.run.')) ?? [];
		const run = JSON.parse(text);
		run.tasks.splice(1, 0, { number, standing: 'open' });
		localStorage.setItem(key, JSON.stringify(run));
	}, task);
	await page.goto('/practice/');
	await openTask(page);
	await page.getByRole('button', { name: 'Next task' }).click();
	await page.getByRole('heading', { name: 'This task cannot be opened' }).waitFor();
	await page.getByText(`Something went wrong in task ${task}: `).waitFor();
	await page.reload();
	await page.getByText(`Something went wrong in task ${task}: `).waitFor();
	await goPast(page);
	// The run meets the same fault whenever it comes to that family.
	await page.goto('about:blank');
	expect(new Set(faults.splice(0)).size).toBeGreaterThan(0);
});

describe('what the site no longer has asks for a reload, and what was typed is there again', () => {
	for (const module of [mark, noting, sentences])
		test(module, async ({ openPage, faults }) => {
			const page = await openPage(altered);
			await takeAway(page, module);
			await page.goto(`/practice/?task=${task}`);
			await openTask(page);
			const field = page.locator('[data-answer="length"]');
			await page.locator('[data-answer="needed"]').fill('.19');
			await field.fill('3/16');
			await field.press('Enter');
			await told(page).getByText('could not be loaded').waitFor();
			expect(await told(page).textContent()).not.toContain('network');
			await page.unrouteAll();
			await page.getByRole('button', { name: 'Reload' }).click();
			await expect.poll(() => field.inputValue()).toBe('3/16');
			await field.press('Enter');
			await page.locator('.stamp').waitFor();
			await page.goto('about:blank');
			for (const fault of faults.splice(0))
				expect(fault).toMatch(/404|dynamically imported|could not be loaded/);
		});
});

test('a question whose check cannot be marked says so', async ({ openPage, faults }) => {
	const page = await openPage(altered);
	await plantThrow(page, mark);
	const check = {
		typed: { needed: '.19', length: '3/16' },
		picked: {},
		units: 'in',
		opened: 0
	} as const;
	const link = await writeQuestion({
		task,
		units: 'in',
		opened: 0,
		byStep: false,
		worked: false,
		before: 0,
		checks: [{ ...check, byStep: false }],
		open: {},
		note: ''
	});
	await page.goto(`/ask/#${link}`);
	await page.getByText(`Something went wrong in task ${task}: reload this page`).waitFor();
	expect(await page.getByText('Opening the question').count()).toBe(0);
	await page.goto('about:blank');
	expect(faults.splice(0)).toEqual([expect.stringContaining('planted')]);
});

describe('a page that cannot load what it needs says so and does not wait on', () => {
	const pages: [path: string, module: string, waiting: string][] = [
		['/', 'src/lib/app/plan/planner.ts', 'Working out your day'],
		['/', 'src/lib/app/device/desk.ts', 'Working out your day'],
		['/', 'src/lib/ui/home/Today.svelte', 'Working out your day'],
		['/plan/', 'src/lib/app/plan/planner.ts', 'Working out your plan'],
		['/plan/', 'src/lib/app/device/desk.ts', 'Working out your plan'],
		['/progress/', 'src/lib/app/plan/planner.ts', 'Going through your answers'],
		['/progress/', 'src/lib/app/device/desk.ts', 'Reading your answers'],
		['/practice/', 'src/lib/app/practice/run-reader.ts', 'Drawing your task'],
		['/practice/done/', 'src/lib/app/plan/planner.ts', 'Looking back'],
		['/lessons/formulas/', 'src/lib/engine/lessons/formulas.ts', 'Putting the sheet together'],
		['/rehearsal/', rivetLength, '…']
	];
	test.for(pages)('%s without %s', async ([path, module, waiting], { openPage, faults }) => {
		const page = await openPage(altered);
		// Somebody with a history: a newcomer's first page needs none of it.
		const log = await someLog({ start: 20_000, end: 20_001, tasks: 2 });
		await openWithLog(page, log, '/rules/');
		// A run that was left here is taken up.
		await page.evaluate((id) => localStorage.setItem(`bucktail.run.${id}`, '{}'), learner);
		await takeAway(page, module);
		await page.goto(path);
		await page.getByText('could not be loaded').first().waitFor();
		const waits = page.locator('main :is(p.soft, h1)', { hasText: waiting });
		await expect.poll(() => waits.count()).toBe(0);
		// What is asked for again fails again, whenever that is.
		await page.goto('about:blank');
		expect(faults.splice(0).length).toBeGreaterThan(0);
	});
});

describe('a newcomer’s answer says what could not be loaded', () => {
	for (const module of ['src/lib/app/device/desk.ts', 'src/lib/app/home/first-answer.ts'])
		test(module, async ({ openPage, faults }) => {
			const page = await openPage(altered);
			await takeAway(page, module);
			await page.goto('/');
			await page.getByLabel('Length needed').fill('.2');
			await page.locator('label', { hasText: '1/4' }).click();
			await page.getByRole('button', { name: 'Check' }).click();
			await page.getByText('could not be loaded').first().waitFor();
			await page.goto('about:blank');
			expect(faults.splice(0).length).toBeGreaterThan(0);
		});
});

const isInSight = (element: Element) => {
	const { top, bottom } = element.getBoundingClientRect();
	return top >= 0 && bottom <= innerHeight;
};

const valuesOf = (all: Element[]) =>
	all.map((field) => (field instanceof HTMLInputElement ? field.value : ''));

test('a chart that cannot be loaded is told in one sentence', async ({ openPage }) => {
	const page = await openPage(altered);
	await page.goto('/practice/?task=RL1-00C8-8D');
	await openTask(page);
	await page.locator('[data-answer]').first().waitFor();
	await page.route('**/*.js', (route) => route.fulfill({ status: 404 }));
	await page.getByRole('button', { name: 'Charts' }).click();
	await page.getByText('Part of this page could not be loaded').waitFor();
});

test('a lesson whose numbers cannot be drawn says so, and draws them when it is asked again', async ({
	openPage,
	faults
}) => {
	const page = await openPage(altered);
	// The file of another method that comes along: what it tells is fetched before any task is drawn.
	await takeAway(page, 'src/lib/engine/methods/blank-size.ts?told');
	await page.goto('/lessons/#setback');
	await page.getByText('No new numbers could be drawn.').waitFor();
	await told(page).getByText('could not be loaded').waitFor();
	expect(await page.getByText('Drawing new numbers').count()).toBe(0);
	await page.unrouteAll();
	await page.getByRole('button', { name: 'Try again' }).click();
	await page.getByRole('textbox', { name: 'Setback' }).waitFor();
	expect(faults.splice(0).length).toBeGreaterThan(0);
});

test('a press before the script has come waits for it', async ({ openPage }) => {
	const page = await openPage(altered);
	let come = () => {};
	const there = new Promise<void>((resolve) => (come = resolve));
	await page.route('**/*.js', async (route) => {
		await there;
		await route.continue();
	});
	await page.goto('/sets/collect/', { waitUntil: 'commit' });
	const paste = page.getByRole('button', { name: 'Paste a text' });
	await paste.waitFor();
	const pressed = paste.click();
	come();
	await pressed;
	await page.getByLabel('Hand-in texts, or the link of a set').waitFor();
});
