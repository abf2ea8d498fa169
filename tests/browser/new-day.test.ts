import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { dayOf, isoOf } from '../../src/lib/engine/schedule/day.ts';
import type { KnownEvent } from '../../src/lib/engine/schedule/event.ts';
import { courseKey } from '../../src/lib/engine/schedule/course-fold.ts';
import { firstSettings } from '../../src/lib/engine/schedule/course-settings.ts';
import { learner, openWithLog, someLog } from './seeded-log.ts';
import { test } from './site-test.ts';

/*
 * A tab that stays open: past midnight in full view, asleep for a week, with a clock set back, or
 * carried into another time zone. What it shows is of the day that it is.
 */

// a Thursday, two weeks before the exam
const first = '2026-11-26';
const exam = '2026-12-10';
const evening = `${first}T22:00:00`;

const attempts = await someLog({ start: dayOf(first) - 9, end: dayOf(first) + 1, tasks: 8 });
const course: KnownEvent = {
	...{ id: 'c0000000-0000-4000-8000-000000000001', v: 1, type: 'setting', learner, at: 1 },
	...{ day: isoOf(dayOf(first) - 9), key: courseKey },
	value: { ...firstSettings(isoOf(dayOf(first) - 9)), exam }
};

/** The run of the first day, done but for its last task, as the page keeps it. */
function halfDone(): string {
	const today = attempts.filter(({ day }) => day === first);
	const tasks = [...new Set(today.map(({ task }) => task))];
	return JSON.stringify({
		...{ id: today[0]?.runId, topic: 'plan', level: 1, at: 1, day: dayOf(first), budget: 1500 },
		tasks: tasks.map((number, i) => ({
			number,
			standing: i > 0 ? 'right' : 'wrong',
			...(i === 1 && { standing: 'open' }),
			planned: {
				...{ kind: number.slice(0, 3), skill: today[0]?.skills[0]?.skill, seconds: 100 },
				reason: { kind: 'missed', skill: today[0]?.skills[0]?.skill, day: dayOf(first) - 1 },
				...{ worked: false, reading: 0, returned: false }
			}
		}))
	});
}

/** What each page says on that evening, the morning after, and a week later. */
const pages: readonly (readonly [path: string, ...says: (readonly string[])[]])[] = [
	[
		'/',
		['Left today: 1 task', 'yesterday 8 tasks', '26 Nov', '14 days to the exam on Thu 10 Dec'],
		['Today: ', 'yesterday 8 tasks', '27 Nov', '13 days to the exam on Thu 10 Dec'],
		['Today: ', '26 Nov 8 tasks', '3 Dec', '7 days to the exam on Thu 10 Dec']
	],
	[
		'/plan/',
		['14 days to the exam, 25', 'Today: 1 task left.', 'Comes up on Saturday.'],
		['13 days to the exam, 25', 'Start today’s tasks', 'Comes up tomorrow.'],
		['7 days to the exam, 25', 'Start today’s tasks', 'Missed on 23 Nov.']
	],
	[
		'/progress/',
		['to row. Last made yesterday.', 'Holes and drillstoday'],
		['to row. Last made on Wednesday.', 'Holes and drillstoday'],
		['to row. Last made on 25 Nov.', 'Holes and drillstoday']
	],
	[
		'/practice/',
		['You missed “Width of the shop head” yesterday.', '2 of 8', 'Today’s tasks'],
		['You missed “Width of the shop head” on Wednesday.', '2 of 8', 'Tasks of 26 Nov'],
		['You missed “Width of the shop head” on 25 Nov.', '2 of 8', 'Tasks of 26 Nov']
	],
	[
		'/practice/done/',
		['So far: 7 tasks, 20 minutes', 'Yesterday it was 6 of 8', 'tomorrow · '],
		['So far: 7 tasks, 20 minutes', 'Wednesday it was 6 of 8', 'today · '],
		['So far: 7 tasks, 20 minutes', '25 Nov it was 6 of 8', 'today · ']
	]
];

async function beginEvening(page: Page): Promise<void> {
	// A page that shows nothing of a log.
	await openWithLog(page, [...attempts, course], '/rules/');
	await page.evaluate(([key, run]) => localStorage.setItem(key, run), [
		`bucktail.run.${learner}`,
		halfDone()
	] as const);
}

/** Waits until a page says all of these, be it in the name of a drawing. */
async function says(page: Page, texts: readonly string[]): Promise<void> {
	const text = () =>
		page.locator('main').evaluate((main) => {
			const named = [...main.querySelectorAll('[aria-label]')];
			const names = named.map((one) => one.getAttribute('aria-label'));
			return [main.textContent, ...names].join(' ').replaceAll(/\s+/g, ' ');
		});
	for (const one of texts) await expect.poll(text, { timeout: 5000 }).toContain(one);
}

/** The clock of the page's device, as it is after a sleep; then somebody looks at the page. */
async function wake(page: Page, time: string): Promise<void> {
	await page.clock.setSystemTime(new Date(time));
	await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
}

test('a page left open is of the day that it is', async ({ openPage }) => {
	const page = await openPage({ time: evening });
	await beginEvening(page);
	// Past midnight in full view, and a week later.
	for (const [path, evenings = [], mornings = [], weeks = []] of pages) {
		await page.clock.setSystemTime(new Date(evening));
		await page.goto(path);
		await says(page, evenings);
		// Nobody looks away and back: the computer slept with the tab in front.
		await page.clock.fastForward('08:00:00');
		await says(page, mornings);
		await wake(page, '2026-12-03T08:00:00');
		await says(page, weeks);
		if (path !== '/') continue;
		// The clock set back, and another time zone.
		await wake(page, '2026-11-24T22:00:00');
		await says(page, ['16 days to the exam on Thu 10 Dec', '24 Nov']);
		await wake(page, evening);
		const device = await page.context().newCDPSession(page);
		await device.send('Emulation.setTimezoneOverride', { timezoneId: 'Pacific/Auckland' });
		await page.clock.fastForward('00:01');
		await page.clock.fastForward('00:30');
		await says(page, mornings);
		await device.send('Emulation.setTimezoneOverride', { timezoneId: '' });
		await device.detach();
	}
});
