import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { cardByCode } from '../../src/lib/engine/families/catalogue.ts';
import { dayOf } from '../../src/lib/engine/schedule/day.ts';
import { writeTaskNumber } from '../../src/lib/engine/tasks/task-number.ts';
import { looks } from './axe.ts';
import { answerByKeyboard, openTask, rightAnswers, tabTo, wrongAnswers } from './keyboard.ts';
import { openWithLog, someLog } from './seeded-log.ts';
import { test } from './site-test.ts';

const rivetLength = cardByCode('RL');

test('a whole run by keyboard alone, every task wrong and then right, on a desk and a phone', async ({
	openPage
}) => {
	const page = await openPage();
	await page.goto('/choose/');
	await tabTo(page, 'input[name="level"]');
	await page.keyboard.press('ArrowDown');
	await tabTo(page, 'form button');
	await page.keyboard.press('Enter');
	const topics = new Set<string>();
	for (let n = 1; n <= 10; n++) {
		await page.setViewportSize(n % 2 === 0 ? looks[0].viewport : looks[1].viewport);
		await readWorked(page);
		const task = await openTask(page);
		expect(task.id.level).toBe(2);
		topics.add(task.family.topic);
		await answerByKeyboard(page, wrongAnswers(task));
		await page.locator('.stamp', { hasText: 'REWORK' }).waitFor();
		await answerByKeyboard(page, rightAnswers(task));
		await page.locator('.stamp', { hasText: 'ACCEPT' }).waitFor();
		await expect.poll(() => page.locator('[data-next]:focus').count()).toBe(1);
		if (n < 10) {
			await page.keyboard.press('Enter');
			await page.waitForURL((url) => url.searchParams.get('task') !== task.number);
		}
	}
	expect(topics.size).toBeGreaterThanOrEqual(4);
	const standings = await page
		.locator('.bar ol button')
		.evaluateAll((all) => all.map((one) => one.className));
	expect(standings.filter((name) => name.includes('helped')).length).toBe(10);
});

/** Reads what is shown worked before a kind of task that is new, and goes on to the task itself. */
async function readWorked(page: Page): Promise<void> {
	const { number } = await openTask(page);
	await page.locator('.bar [aria-current]').waitFor();
	if ((await page.locator('.bar').getByText('Worked, then').count()) === 0) return;
	await page.getByText('New here: read this').waitFor();
	await tabTo(page, '[data-next]');
	await page.keyboard.press('Enter');
	await page.waitForURL((url) => url.searchParams.get('task') !== number);
	const above = page.locator('.topic');
	await expect.poll(() => above.textContent()).not.toContain('Worked for you');
	if ((await above.textContent())?.includes('step by step')) {
		await page.getByRole('button', { name: 'Back to the whole task' }).click();
	}
}

test('a topic that somebody chose begins with its lesson and a worked task, and help fades', async ({
	openPage
}) => {
	const page = await openPage({ viewport: looks[1].viewport });
	await page.goto('/choose/');
	await page.locator('input[value="bends"]').check();
	await page.getByRole('button', { name: 'Start ten tasks' }).click();
	const worked = await openTask(page);
	await page.getByText('New here: read this').waitFor();
	await page.locator('.topic', { hasText: 'Worked for you' }).waitFor();
	await page.getByText('Worked, then 1 of 10').waitFor();
	await page.getByRole('button', { name: 'Why now' }).click();
	await page.getByText('is new. First one is worked for you.').first().waitFor();
	await page.keyboard.press('Escape');
	await page.locator('[data-next]').click();
	await page.waitForURL((url) => url.searchParams.get('task') !== worked.number);
	const own = await openTask(page);
	expect(own.family.id).toBe(worked.family.id);
	await page.getByRole('button', { name: 'Check', exact: true }).waitFor();
	expect(await page.getByText('New here: read this').count()).toBe(0);
});

test('a step that is wrong says what it would do to the metal', async ({ openPage }) => {
	const page = await openPage({ viewport: looks[1].viewport });
	// R 1/4 in, T 0.063 in, 90°: T left out.
	await page.goto('/practice/?task=BS1-1DP4-5R');
	await page.getByRole('button', { name: 'Step by step' }).click();
	await page.locator('[data-answer="K"]').fill('1');
	await page.getByRole('button', { name: 'Check', exact: true }).click();
	await page.locator('[data-answer="setback"]').fill('0.25');
	await page.getByRole('button', { name: 'Check', exact: true }).click();
	await page
		.locator('.said', { hasText: 'T left out of the setback' })
		.getByText('each leg comes out about 1/16 in too long')
		.waitFor();
});

test('what was typed and checked is there again after a reload', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/practice/');
	const task = await openTask(page);
	const [key = ''] = task.drawn.asked;
	await answerByKeyboard(page, wrongAnswers(task));
	await page.locator('.stamp').waitFor();
	await page.reload();
	await page.locator('.stamp', { hasText: 'REWORK' }).waitFor();
	expect((await openTask(page)).number).toBe(task.number);
	const field = page.locator(`[data-answer="${key}"]`);
	if ((await field.count()) > 0) expect(await field.inputValue()).toBe(wrongAnswers(task)[key]);
});

test.for([
	['/choose/', looks[1].viewport],
	['/practice/', looks[0].viewport]
] as const)(
	'a number typed on %s opens its task, and a wrong one says what is wrong',
	async ([path, viewport], { openPage }) => {
		const page = await openPage({ viewport });
		await page.goto(path);
		if (path === '/practice/') await openTask(page);
		const field = page.getByLabel('Task number');
		await field.fill('nonsense');
		await field.press('Enter');
		await page.getByText('That is not a task number').waitFor();
		await field.fill('rl1 0004 1c');
		await field.press('Enter');
		await page.getByText('One character of that task number is off').waitFor();
		expect(await field.inputValue()).toBe('rl1 0004 1c');
		await field.fill('rl1 oOc8 8d');
		await field.press('Enter');
		await page.waitForURL('**/practice/?task=RL1-00C8-8D');
		expect((await openTask(page)).number).toBe('RL1-00C8-8D');
	}
);

test('a link with a number that is no task says so and offers a way on', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/practice/?task=RL1-0004-1C');
	await page.getByText('One character of that task number is off').waitFor();
	await page.getByRole('link', { name: 'Choose a topic' }).click();
	await page.getByRole('heading', { name: 'Choose what to work on' }).waitFor();
});

test('the address of a task is a link to it, and Back goes to the task before', async ({
	openPage
}) => {
	const page = await openPage();
	await page.goto('/practice/');
	const first = await openTask(page);
	await page.getByRole('button', { name: 'Next task' }).click();
	await page.waitForURL((url) => url.searchParams.get('task') !== first.number);
	const second = await openTask(page);
	await page.goBack();
	await expect.poll(async () => (await openTask(page)).number).toBe(first.number);
	const other = await openPage();
	await other.goto(`/practice/?task=${second.number}`);
	expect((await openTask(other)).drawn).toEqual(second.drawn);
	await other.getByRole('heading', { name: second.drawn.question }).waitFor();
});

test('a step can be shown before answering, and the answer is then helped', async ({
	openPage
}) => {
	const page = await openPage();
	await page.goto('/practice/?task=RL1-00C8-8D');
	const task = await openTask(page);
	await page.getByRole('button', { name: 'Step by step' }).click();
	await page.getByRole('button', { name: 'Show this step' }).click();
	await page.getByText('How much shank must stand out').waitFor();
	expect(await page.locator('.done').textContent()).toContain('shown');
	// What is typed right after the press belongs to the whole task: it is there before the next task
	// of the browser's, so that no quick hand types into a field that goes.
	const key = await page
		.getByRole('button', { name: 'Back to the whole task' })
		.evaluate(async (back: HTMLElement) => {
			back.click();
			await Promise.resolve();
			return document.querySelector<HTMLElement>('[data-answer]')?.dataset.answer;
		});
	expect(key).toBe(task.drawn.asked[0]);
	await answerByKeyboard(page, rightAnswers(task));
	await page.locator('.stamp', { hasText: 'ACCEPT' }).waitFor();
	await expect.poll(() => page.locator('.bar ol button.helped').count()).toBe(1);
});

test('a task is talked through: each step has its verdict before the next is asked', async ({
	openPage
}) => {
	const page = await openPage();
	await page.goto('/practice/?task=RL1-00C8-8D');
	const { right } = await openTask(page);
	await page.getByRole('button', { name: 'Step by step' }).click();
	for (const key of ['grip', 'shank', 'needed', 'length']) {
		const field = page.locator(`.open [data-answer="${key}"]`);
		await field.waitFor();
		expect(await page.locator('[data-answer]').count()).toBe(1);
		await expect.poll(() => page.locator(`[data-answer="${key}"]:focus`).count()).toBe(1);
		if (key === 'shank') {
			await field.fill('9');
			await field.press('Enter');
			await page.locator('.open', { hasText: 'REWORK' }).waitFor();
			await page.getByRole('button', { name: 'Formula' }).click();
			await page.locator('.open math').first().waitFor();
		}
		await field.fill(String(right[key]));
		await field.press('Enter');
	}
	await page.locator('.stamp', { hasText: 'ACCEPT' }).waitFor();
});

test('a verdict is that of an earlier entry as soon as the entry is changed', async ({
	openPage
}) => {
	const page = await openPage();
	await page.goto('/practice/?task=RL1-00C8-8D');
	await openTask(page);
	const field = page.locator('[data-answer="length"]');
	await page.locator('[data-answer="needed"]').fill('.19');
	await field.fill('3/16');
	await field.press('Enter');
	await page.locator('.stamp', { hasText: 'REWORK' }).waitFor();
	await field.fill('1/4');
	await page.locator('.stamp', { hasText: 'earlier entry' }).waitFor();
});

test('over a phone’s keyboard stand drawing, field, verdict and the keys that it hides', async ({
	openPage
}) => {
	const page = await openPage({ viewport: { width: 360, height: 380 }, hasTouch: true });
	await page.goto('/practice/?task=RL3-002E-89');
	const task = await openTask(page);
	await page.locator('[data-answer="grip"]').focus();
	await page.getByRole('button', { name: '.', exact: true }).click();
	await page.keyboard.type('1');
	await page.getByRole('button', { name: '/', exact: true }).click();
	expect(await page.locator('[data-answer="grip"]').inputValue()).toBe('.1/');
	expect(await page.locator('[data-answer="grip"]:focus').count()).toBe(1);
	const answers = { ...rightAnswers(task), grip: '97.7' };
	for (const [key, answer] of Object.entries(answers)) {
		await page.locator(`[data-answer="${key}"]`).focus();
		await page.keyboard.press('ControlOrMeta+a');
		await page.keyboard.type(answer);
	}
	await page.keyboard.press('Enter');
	await page.locator('.stamp', { hasText: 'REWORK' }).waitFor();
	expect(await page.evaluate(() => scrollY)).toBe(0);
	for (const part of ['[data-answer="grip"]', '.stamp', '.keys']) {
		const box = await page.locator(part).boundingBox();
		expect(box && box.y >= 0 && box.y + box.height <= 380, part).toBe(true);
	}
});

test.for(['RL1-00C8-8D', 'RL3-002E-89', 'BW1-03MP-4V'])(
	'on a phone the verdict and what comes next are both in view: %s',
	async (number, { openPage }) => {
		const page = await openPage({ viewport: { width: 360, height: 740 }, hasTouch: true });
		await page.goto(`/practice/?task=${number}`);
		const task = await openTask(page);
		await answerByKeyboard(page, rightAnswers(task));
		await page.locator('.stamp', { hasText: 'ACCEPT' }).waitFor();
		await page.locator('[data-next]:focus').waitFor();
		for (const part of ['.stamp', '[data-next]']) {
			await expect.poll(() => isInView(page, part), { message: part }).toBe(true);
		}
	}
);

test('scratch arithmetic stays with its task', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/practice/?task=RL1-00C8-8D');
	await openTask(page);
	await page.getByLabel('Scratch').fill('1.5 * 5/32');
	await page.keyboard.press('Enter');
	await page.getByText('0.2344').waitFor();
	await page.reload();
	await page.getByText('0.2344').waitFor();
});

test('a number with two readings is asked about, and costs nothing', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/practice/?task=RL1-00C8-8D');
	await openTask(page);
	const field = page.locator('[data-answer="length"]');
	await page.locator('[data-answer="needed"]').fill('.3');
	await field.fill('5');
	await page.getByText('Do you mean').waitFor();
	await page.keyboard.press('Enter');
	expect(await page.locator('.stamp').count()).toBe(0);
	await page.getByRole('button', { name: '5/16 in, a −5 length' }).click();
	await page.getByText('Read as 5/16 in').waitFor();
	await field.press('Enter');
	await page.locator('.stamp').waitFor();
});

test('no press is lost while the script of the first page is on its way', async ({ openPage }) => {
	const page = await openPage({ altered: true });
	let come = () => {};
	const there = new Promise<void>((resolve) => (come = resolve));
	await page.route('**/_app/**/*.js', async (route) => {
		await there;
		await route.continue();
	});
	await page.goto('/', { waitUntil: 'commit' });
	const field = page.getByLabel('Taken', { exact: true });
	await field.waitFor();
	// Nor is anything typed that would come to nothing.
	await field.evaluate((input) => input.focus());
	expect(await field.evaluate((input) => input === document.activeElement)).toBe(false);
	const pressed = page.locator('label', { hasText: '5/16' }).click();
	come();
	await pressed;
	expect(await field.inputValue()).toBe('5/16 in');
	await page.getByLabel('Length needed').fill('.2525');
	await page.getByRole('button', { name: 'Check' }).click();
	await page.locator('.stamp', { hasText: 'ACCEPT' }).waitFor();
});

test('arithmetic in an answer is worked out with its value shown', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/practice/?task=BW1-03MP-4V');
	await openTask(page);
	await page.locator('[data-answer]').first().fill('.032+.040+1.5*1/8');
	await page.getByText('0.2595 in').waitFor();
});

test('lengths are shown in millimetres on request, and stay so', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/practice/');
	await openTask(page);
	await page.getByLabel('mm').check();
	await page.reload();
	await openTask(page);
	expect(await page.getByLabel('mm').isChecked()).toBe(true);
	await page.getByText('MM', { exact: true }).waitFor();
});

/** Whether all of it stands in the window, with nothing over its middle. */
function isInView(page: Page, selector: string): Promise<boolean> {
	return page.locator(selector).evaluate((element) => {
		const { left, top, bottom, width, height } = element.getBoundingClientRect();
		const over = document.elementFromPoint(left + width / 2, top + height / 2);
		return top >= 0 && bottom <= innerHeight && element.contains(over);
	});
}

test('on a phone the strip of a long run shows the task in hand, and what stands large at its end is clear of its sentence', async ({
	openPage
}) => {
	const today = '2026-11-27';
	const page = await openPage({
		...{ viewport: looks[0].viewport, hasTouch: true },
		time: `${today}T09:00:00`
	});
	const start = dayOf(today) - 1;
	await openWithLog(page, await someLog({ start, end: start + 1, tasks: 11 }), '/choose/');
	await tabTo(page, 'form button');
	await page.keyboard.press('Enter');
	await openTask(page);
	for (let seed = 1; seed <= 10; seed++) {
		const number = writeTaskNumber({ code: 'RL', level: 1, seed, rev: rivetLength?.rev ?? 0 });
		await page.goto(`/practice/?task=${number}`);
		await answerByKeyboard(page, wrongAnswers(await openTask(page)));
		await page.locator('.stamp', { hasText: 'REWORK' }).waitFor();
	}
	for (const at of [0, 9, -1]) {
		await page.locator('.bar ol button').nth(at).click();
		const out = await page.locator('.bar [aria-current]').evaluate(async (cell) => {
			await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
			const [strip, own] = [cell.closest('ol'), cell].map((one) => one?.getBoundingClientRect());
			return strip && own ? Math.max(strip.left - own.left, own.right - strip.right) : Infinity;
		});
		expect(out, `cell ${at}`).toBeLessThanOrEqual(0);
	}
	await page.goto('/practice/done/');
	const fact = page.locator('.fact', { hasText: 'right at first.' });
	const gap = await fact.evaluate((one) => {
		const of = (tag: string) => {
			const range = document.createRange();
			range.selectNodeContents(one.querySelector(tag) ?? one);
			return range.getBoundingClientRect();
		};
		return of('p').left - of('b').right;
	});
	expect(await fact.locator('b').textContent()).toMatch(/^\d+ of \d\d$/);
	expect(gap).toBeGreaterThan(8);
});
