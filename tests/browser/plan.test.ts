import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Task } from '../../src/lib/engine/tasks/task.ts';
import { entryOf, readAnswer } from '../../src/lib/engine/marking/answer.ts';
import { mark } from '../../src/lib/engine/marking/mark.ts';
import { dayOf, isoOf } from '../../src/lib/engine/schedule/day.ts';
import { givensOf } from '../../src/lib/engine/tasks/givens.ts';
import { withSlip } from '../../src/lib/engine/solver/evaluate.ts';
import { readICalendar } from '../engine/schedule/read-icalendar.ts';
import { isSound } from './axe.ts';
import { logged } from './dump.ts';
import {
	answerByKeyboard,
	askWhole,
	openTask,
	rightAnswers,
	whyNow,
	wrongAnswers
} from './keyboard.ts';
import { skillOf } from '../../src/lib/engine/schedule/syllabus.ts';
import { test } from './site-test.ts';
import { loadReader } from '../../src/lib/engine/quantity/reader.ts';

await loadReader();

// a Wednesday, sixteen days before the exam
const start = '2026-11-25';
const exam = '2026-12-11';

/** In the morning of the first day. */
const time = `${start}T10:00:00`;

/** Opens the plan at ten in the morning of a day. */
async function openPlan(page: Page, day = start): Promise<void> {
	await page.clock.setSystemTime(new Date(`${day}T10:00:00`));
	await page.goto('/plan/');
	await page.getByRole('heading', { name: 'Where you stand' }).waitFor();
}

async function setExam(page: Page, date: string): Promise<void> {
	await page.getByLabel('Day of the exam').fill(date);
	await page.keyboard.press('Tab');
}

async function setMinutes(page: Page, minutes: string): Promise<void> {
	await page.getByLabel('Minutes a day').fill(minutes);
	await page.keyboard.press('Enter');
}

/** The line that says what is planned for today. */
function todayLine(page: Page) {
	return page.getByText(/^Today: \d+ tasks?/);
}

async function tasksToday(page: Page): Promise<number> {
	return Number((await todayLine(page).textContent())?.match(/\d+/)?.[0]);
}

interface Slipped {
	readonly answers: Record<string, string>;
	readonly says: string;
}

/** An answer that comes of one slip alone in the step that was asked, and the slip's sentence. */
function slipped(task: Task): Slipped | null {
	const { method } = task;
	const [key = '', other] = task.drawn.asked;
	if (other !== undefined) return null;
	for (const [id, { step, says }] of Object.entries(method.slips)) {
		if (step !== key) continue;
		const typed = String(withSlip(method, task.right, id)[key]);
		const entry = entryOf(readAnswer(method, key, typed, 'in'));
		const verdict = entry && mark(task, { [key]: entry })[key];
		const cause = verdict?.kind === 'rework' ? verdict.cause : null;
		// Some numbers can come of two slips; then neither is charged.
		const isAlone = cause?.kind === 'slip' && cause.slips.join() === id;
		if (isAlone) return { answers: { [key]: typed }, says };
	}
	return null;
}

function askedSkill({ method, drawn }: Task): string {
	return skillOf(method, drawn.asked[0] ?? '');
}

interface Met {
	readonly task: Task;
	readonly missed: string | null;
	readonly why: string;
}

/**
 * Goes through the run that is open to its end, two minutes a task: misses the first `misses` tasks
 * that another slip fits, answers the others right, and reads the worked ones.
 */
async function work(page: Page, misses: number): Promise<Met[]> {
	const met: Met[] = [];
	const next = page.locator('[data-next]');
	for (;;) {
		const task = await openTask(page);
		await askWhole(page);
		const why = await whyNow(page);
		let missed: string | null = null;
		if ((await page.locator('[data-answer], [data-answer-choice]').count()) > 0) {
			await page.clock.fastForward(120_000);
			const made = met.map((one) => one.missed).filter((says) => says !== null);
			const possible = made.length < misses ? slipped(task) : null;
			// Of two slips in one step the plan would tell the later.
			const isNew = !met.some(
				(one) => one.missed !== null && askedSkill(one.task) === askedSkill(task)
			);
			const slip = isNew ? possible : null;
			missed = slip?.says ?? null;
			await answerByKeyboard(page, slip?.answers ?? rightAnswers(task));
			await page.locator('.stamp', { hasText: slip ? 'REWORK' : 'ACCEPT' }).waitFor();
			await page.getByText('Saved on this device.').waitFor();
		}
		met.push({ task, missed, why });
		const last = (await next.textContent())?.includes('Finish') ?? false;
		await next.click();
		if (last) break;
		await page.waitForURL((url) => url.searchParams.get('task') !== task.number);
	}
	await page.waitForURL((url) => url.pathname === '/practice/done/');
	return met;
}

// Two whole runs, task by task, take longer than other tests.
test('two misses come back today and on a later day, with new numbers', async ({ openPage }) => {
	const page = await openPage({ time, viewport: { width: 360, height: 740 } });
	await openPlan(page);
	await setExam(page, exam);
	await setMinutes(page, '15');
	await page.getByRole('heading', { name: '16 days to the exam, 15 minutes a day' }).waitFor();
	await page.getByText(/about \d+\s% of the steps right on 11 December/).waitFor();
	const planned = await tasksToday(page);
	await page.getByRole('button', { name: 'Start today’s tasks' }).click();

	const first = await work(page, 2);
	const misses = first.filter(({ missed }) => missed !== null);
	expect(misses).toHaveLength(2);
	for (const { task, missed } of misses) {
		const back = first.filter(
			({ why, task: other }) => why.includes('You missed') && other.family.code === task.family.code
		);
		expect(back.length, missed ?? '').toBeGreaterThan(0);
		for (const one of back) expect(givensOf(one.task)).not.toBe(givensOf(task));
	}
	const answered = first.filter(({ why }) => !why.includes('You missed'));
	expect(answered.length).toBeGreaterThanOrEqual(planned - 2);

	await openPlan(page);
	for (const { missed } of misses) await page.getByText(missed ?? '').waitFor();
	const seen = new Set(first.map(({ task }) => givensOf(task)));

	// Days go by without practice until one of the two is planned again; nothing piles up.
	let day = dayOf(start) + 1;
	const due = page.locator('li', { hasText: misses[0]?.missed ?? '' });
	for (; day < dayOf(exam); day++) {
		await openPlan(page, isoOf(day));
		expect(await tasksToday(page)).toBeLessThanOrEqual(2 * planned);
		if ((await due.textContent())?.includes('Comes up today')) break;
	}
	expect(day).toBeLessThan(dayOf(exam));
	await page.getByRole('button', { name: 'Start today’s tasks' }).click();
	const again = await work(page, 0);
	const returned = again.filter(({ why }) => why.includes('You missed'));
	// A step that several families share may come back in any of them.
	const skillsOf = ({ method }: Task) =>
		Object.keys(method.steps).map((step) => skillOf(method, step));
	const wanted = new Set(misses.slice(0, 1).flatMap(({ task }) => skillsOf(task)));
	const shared = returned.filter(({ task }) => skillsOf(task).some((one) => wanted.has(one)));
	const tells = again.map((one) => `${one.task.number}: ${one.why}`).join('\n');
	expect(shared.length, `${misses[0]?.task.number}\n${tells}`).toBeGreaterThan(0);
	for (const { task } of again) expect(seen).not.toContain(givensOf(task));

	// What was put right on a later day is no longer due.
	await openPlan(page, isoOf(day));
	const calendar = await savedCalendar(page);
	expect(calendar.filter(({ uid }) => uid.startsWith('practice')).length).toBeGreaterThan(0);
	expect(calendar.some(({ summary }) => summary?.startsWith('Due again'))).toBe(false);
});

test('every change plans again at once, and is there after a reload', async ({ openPage }) => {
	const page = await openPage({ time });
	await openPlan(page);
	await page.getByRole('heading', { name: '25 minutes a day' }).waitFor();
	await setExam(page, exam);
	await page.getByRole('heading', { name: '16 days to the exam, 25 minutes a day' }).waitFor();
	const before = await tasksToday(page);
	await setMinutes(page, '60');
	await page.getByRole('heading', { name: '16 days to the exam, 60 minutes a day' }).waitFor();
	expect(await tasksToday(page)).toBeGreaterThan(before);
	await page.getByText('Days off: none').click();
	await page.getByLabel('Wednesday').check();
	await page.getByText('Today is a day off.').waitFor();
	await page.getByLabel('Day off', { exact: true }).fill('2026-11-28');
	await page.getByLabel('Until, if more than one').fill('2026-11-30');
	await page.getByRole('button', { name: 'Add' }).click();
	await page.getByText('Days off: Wednesday, 28 Nov to 30 Nov').waitFor();
	await page.getByText('The same as a table').click();
	const off = page.locator('tr', { hasText: /off$/ }).locator('th');
	expect(await off.allTextContents()).toEqual([
		'today',
		'Sat 28 Nov',
		'Sun 29 Nov',
		'Mon 30 Nov',
		'Wed 2 Dec',
		'Wed 9 Dec'
	]);
	await page.reload();
	await page.getByRole('heading', { name: '16 days to the exam, 60 minutes a day' }).waitFor();
	await page.getByText('Days off: Wednesday, 28 Nov to 30 Nov').waitFor();
	await page.getByRole('button', { name: 'Remove the exam' }).click();
	await page.getByRole('heading', { name: '60 minutes a day', exact: true }).waitFor();
	expect(await page.getByLabel('Day of the exam').inputValue()).toBe('');
});

test('what cannot be set is told in one sentence, and nothing changes', async ({ openPage }) => {
	const page = await openPage({ time });
	await openPlan(page);
	await setExam(page, exam);
	const heading = page.getByRole('heading', { name: '16 days to the exam, 25 minutes a day' });
	await heading.waitFor();
	await setExam(page, '2026-11-24');
	await page.getByText('That day has passed: choose today or a later day.').waitFor();
	await setMinutes(page, '4');
	await page.getByText('Type a whole number of minutes from 5 to 240.').waitFor();
	expect(await page.getByLabel('Minutes a day').inputValue()).toBe('4');
	expect(await heading.count()).toBe(1);
	await page.reload();
	await heading.waitFor();
	expect(await page.getByLabel('Day of the exam').inputValue()).toBe(exam);
});

test('minutes are taken when the typing pauses', async ({ openPage }) => {
	const page = await openPage({ time });
	await openPlan(page);
	await page.getByLabel('Minutes a day').fill('40');
	await page.getByRole('heading', { name: '40 minutes a day' }).waitFor();
	expect(await page.evaluate(() => document.activeElement?.matches('input'))).toBe(true);
});

test('two changes at once both stay, and none is taken back while it is saved', async ({
	openPage
}) => {
	const page = await openPage({ time });
	await openPlan(page);
	await page.evaluate((date) => {
		const titles: string[] = [];
		const look = () => {
			const title = document.querySelector('h1')?.textContent ?? '';
			if (titles.at(-1) !== title) titles.push(title);
		};
		const watch = { childList: true, characterData: true, subtree: true };
		new MutationObserver(look).observe(document.body, watch);
		Object.assign(window, { titles });
		const enter = (selector: string, value: string, ...events: string[]) => {
			const input = document.querySelector<HTMLInputElement>(selector);
			if (input) input.value = value;
			for (const name of events) input?.dispatchEvent(new Event(name, { bubbles: true }));
		};
		enter('form input[type="date"]', date, 'input', 'blur');
		enter('form input[inputmode="numeric"]', '40', 'input', 'change');
	}, exam);
	await expect.poll(async () => (await logged(page, 'setting')).length).toBe(2);
	await page.getByRole('link', { name: 'Learner 1' }).waitFor();
	await page.waitForFunction(() => new Promise(requestAnimationFrame));
	const title = '16 days to the exam, 40 minutes a day';
	expect(await page.evaluate('titles')).toEqual([title]);
	await page.reload();
	await page.getByRole('heading', { name: title }).waitFor();
});

test('too little time says what is given up, and how many minutes would do', async ({
	openPage
}) => {
	const page = await openPage({ time });
	await openPlan(page);
	await setExam(page, '2026-12-05');
	await setMinutes(page, '10');
	await page.getByRole('heading', { name: 'Too little time for everything' }).waitFor();
	await page.getByText('What is given up').click();
	await page.locator('dd', { hasText: 'Bend allowance' }).waitFor();
	const enough = page.getByRole('button', { name: /^Plan \d+ minutes a day$/ });
	const minutes = Number((await enough.textContent())?.match(/\d+/)?.[0]);
	expect(minutes).toBeGreaterThan(10);
	await enough.click();
	await page
		.getByRole('heading', { name: `10 days to the exam, ${minutes} minutes a day` })
		.waitFor();
	expect(await page.getByText('Too little time for everything').count()).toBe(0);
	await setMinutes(page, String(minutes - 5));
	await page.getByRole('heading', { name: 'Too little time for everything' }).waitFor();
});

/** The calendar file as the strict reader reads it. */
async function savedCalendar(page: Page) {
	const [file] = await Promise.all([
		page.waitForEvent('download'),
		page.getByRole('button', { name: 'Save calendar file' }).click()
	]);
	expect(file.suggestedFilename()).toBe('bucktail-plan.ics');
	return readICalendar(await readFile(await file.path(), 'utf8'));
}

test('the calendar file holds the plan, under ids that stay', async ({ openPage }) => {
	const page = await openPage({ time });
	await openPlan(page);
	await setExam(page, exam);
	await page.getByRole('heading', { name: '16 days to the exam' }).waitFor();
	const calendar = await savedCalendar(page);
	expect(calendar).toHaveLength(17);
	expect(calendar.every(({ wholeDay }) => wholeDay)).toBe(true);
	expect(calendar[0]?.start).toBe('20261125');
	expect(calendar.at(-1)).toMatchObject({ start: '20261211', summary: 'Exam' });
	await page.getByLabel('Time of day').fill('18:30');
	await setMinutes(page, '40');
	await page.getByRole('heading', { name: '40 minutes a day' }).waitFor();
	const changed = await savedCalendar(page);
	expect(changed.map(({ uid }) => uid)).toEqual(calendar.map(({ uid }) => uid));
	expect(changed[0]?.summary).not.toBe(calendar[0]?.summary);
	expect(changed[0]?.start).toBe('20261125T183000');
});

test('a weak step is worked at once', async ({ openPage }) => {
	const page = await openPage({ time });
	await openPlan(page);
	await page.getByRole('button', { name: 'Start today’s tasks' }).click();
	await openTask(page);
	await page.locator('[data-next]').click();
	await page.locator('[data-answer]').first().waitFor();
	await askWhole(page);
	const task = await openTask(page);
	await answerByKeyboard(page, slipped(task)?.answers ?? wrongAnswers(task));
	await page.getByText('Saved on this device.').waitFor();
	await openPlan(page);
	await page.getByRole('button', { name: 'Go on with today’s tasks' }).waitFor();
	await page
		.getByRole('button', { name: /^Work one: \S/ })
		.first()
		.click();
	await page.waitForURL((url) => url.pathname === '/practice/');
	const next = await openTask(page);
	expect(next.family.code).toBe(task.family.code);
	expect(givensOf(next)).not.toBe(givensOf(task));
});

test('no state breaks a rule that a program can check, or is wider than the page', async ({
	openPage
}) => {
	const page = await openPage({ time });
	await openPlan(page);
	await isSound(page, 'no exam');
	await setExam(page, '2026-12-05');
	await setMinutes(page, '10');
	await page.getByRole('button', { name: /^Plan \d+ minutes a day$/ }).waitFor();
	for (const summary of await page.locator('summary').all()) await summary.click();
	await page.getByLabel('Day off', { exact: true }).fill('2026-11-28');
	await page.getByRole('button', { name: 'Add' }).click();
	await page.getByRole('button', { name: 'Remove 28 Nov' }).waitFor();
	await page.getByRole('button', { name: 'Add' }).click();
	await setMinutes(page, '3');
	await page.getByText('Type a whole number of minutes').waitFor();
	await isSound(page, 'everything open');
});
