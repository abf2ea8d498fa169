import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { loadPlanner } from '../../src/lib/app/plan/planner.ts';
import { readLog } from '../../src/lib/app/progress/progress.ts';
import { dayOf } from '../../src/lib/engine/schedule/day.ts';
import type { Attempt } from '../../src/lib/engine/schedule/event.ts';
import { isSound } from './axe.ts';
import { answerByKeyboard, openTask, wrongAnswers } from './keyboard.ts';
import { openWithLog, someLog } from './seeded-log.ts';
import { seriesOf } from '../../src/lib/ui/progress/recall-series.ts';
import { test } from './site-test.ts';

const today = dayOf('2026-03-20');
const time = '2026-03-20T12:00:00';
const planner = await loadPlanner();
/** Forty days of nine tasks, up to yesterday. */
const log = await someLog({ start: today - 40, end: today, tasks: 9 });

async function openProgress(page: Page, attempts: readonly Attempt[]): Promise<void> {
	await openWithLog(page, attempts, '/progress/');
	await page.getByRole('heading', { name: 'How far to trust these numbers' }).waitFor();
}

async function readingOf(attempts: readonly Attempt[]) {
	async function* inOrder() {
		yield* attempts;
	}
	const { signal } = new AbortController();
	const reading = await readLog(inOrder(), { planner, today, signal, onRead: () => {} });
	if (!reading) throw new Error('the log was not read');
	return reading;
}

/** The cells of a table's rows, row by row. */
function rowsOf(page: Page, heading: string): Promise<string[][]> {
	const section = page.locator('section', { has: page.getByRole('heading', { name: heading }) });
	return section
		.locator('tbody tr')
		.evaluateAll((rows) =>
			rows.map((row) => [...row.children].map((cell) => cell.textContent?.trim() ?? ''))
		);
}

test('before the first task it points to one', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/progress/');
	await page.getByText('Do a few tasks').waitFor();
	await page.getByRole('link', { name: 'To your first task' }).click();
	await page.getByRole('heading', { name: 'How long must this rivet be?' }).waitFor();
});

test('a task just missed is there, and so is what it was', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/practice/?task=BW1-03MP-4V');
	const task = await openTask(page);
	await answerByKeyboard(page, wrongAnswers(task));
	await page.getByText('Saved on this device.').waitFor();
	await page.getByRole('link', { name: 'Progress' }).click();
	await page.getByText('After 60 more first answers').waitFor();
	await page.getByText('1 task on 1 day,').waitFor();
	const [row, ...others] = await rowsOf(page, 'Your runs');
	expect(others).toEqual([]);
	expect(row?.[0]).toContain('Own choice: Bends');
	expect(row?.slice(1)).toEqual(['1', '0', '0', '1', '1']);
	await page.getByText('No slip has been made twice.').waitFor();
});

test('it breaks no rule that a program can check, and is no wider than the page', async ({
	openPage
}) => {
	const page = await openPage({ time });
	await page.goto('/progress/');
	await page.getByText('Do a few tasks').waitFor();
	await isSound(page, 'empty');
	await openProgress(page, log);
	await isSound(page, 'folded');
	for (const summary of await page.locator('summary').all()) await summary.click();
	await isSound(page, 'unfolded');
});

test('recall is what the log comes to, in words, in the drawing and in the table', async ({
	openPage
}) => {
	const page = await openPage({ time });
	await openProgress(page, log);
	const { days, steps } = await readingOf(log);
	const points = seriesOf(days, steps)[0]?.points ?? [];
	const whole = (share = 0) => Math.round(share * 100);
	const last = whole(points.at(-1)?.recall);
	await page.getByText(`${last}\u00a0% today`).first().waitFor();
	const first = whole(points[0]?.recall);
	const told = `All topics: from ${first}\u00a0% on 8 Feb to ${last}\u00a0% today`;
	expect(await page.getByRole('img', { name: told }).count()).toBe(1);
	const rows = await rowsOf(page, 'What you would get right');
	expect(rows.map((row) => row[1])).toEqual(
		points.toReversed().map(({ recall }) => String(whole(recall)))
	);
	expect(rows[0]?.[0]).toBe('today');
});

test('runs are listed newest first, twelve at a time', async ({ openPage }) => {
	const page = await openPage({ time });
	await openProgress(page, log);
	const rows = await rowsOf(page, 'Your runs');
	expect(rows.length).toBe(12);
	expect(rows[0]?.[0]).toContain('Thu 19 Mar');
	for (const length of [24, 36, 40]) {
		await page.getByRole('button', { name: 'Show older runs' }).click();
		await expect.poll(async () => (await rowsOf(page, 'Your runs')).length).toBe(length);
	}
	expect(await page.getByRole('button', { name: 'Show older runs' }).count()).toBe(0);
	const all = await rowsOf(page, 'Your runs');
	for (const [, tasks, right, helped, missed] of all) {
		expect(tasks).toBe('9');
		expect(Number(right) + Number(helped) + Number(missed)).toBe(9);
	}
});

test('the slip made most often leads to a task that asks for its step', async ({ openPage }) => {
	const page = await openPage({ time });
	await openProgress(page, log);
	const [slip] = (await readingOf(log)).slips;
	const line = page
		.locator('section', { has: page.getByRole('heading', { name: 'Slips that come back' }) })
		.locator('li')
		.first();
	expect(await line.textContent()).toContain(slip?.says);
	expect(await line.textContent()).toContain(`${slip?.times} times`);
	await line.getByRole('button').click();
	const { id } = await openTask(page);
	const kind = planner.syllabus.kinds.find((one) => one.id === `${id.code}${id.level}`);
	expect(kind?.skills).toContain(slip?.skill);
});

test('practice per day counts the tasks of the last four weeks', async ({ openPage }) => {
	const page = await openPage({ time });
	await openProgress(page, log);
	await page.getByText('243 tasks on 27 days in the four weeks to today.').waitFor();
	const rows = await rowsOf(page, 'Practice per day');
	expect(rows.length).toBe(27);
	expect(rows[0]?.slice(0, 2)).toEqual(['Thu 19 Mar', '9']);
});

test('it is told whether what was expected came true', async ({ openPage }) => {
	const page = await openPage({ time });
	await openProgress(page, log);
	const { calibration } = await readingOf(log);
	await page.getByText('When Bucktail expected about').waitFor();
	// The figures stand where somebody wants to know.
	expect(await page.getByText('Log loss').isVisible()).toBe(false);
	await page.getByText('How this is worked out').click();
	await page
		.getByText(`Log loss, a penalty for misplaced confidence: ${calibration?.loss.toFixed(3)}`)
		.waitFor();
	await page.getByText(`AUC ${calibration?.auc?.toFixed(2)}`).waitFor();
	const rows = await rowsOf(page, 'How far to trust these numbers');
	const counts = rows.map((row) => Number(row[1]));
	expect(counts.reduce((sum, count) => sum + count, 0)).toBe(calibration?.count);
});

test('a long pause shows the four weeks up to the last practice', async ({ openPage }) => {
	const page = await openPage({ time });
	await openProgress(page, await someLog({ start: today - 80, end: today - 60, tasks: 3 }));
	await page.getByText('in the four weeks to Sun 18 Jan.').waitFor();
});
