import type { Page } from 'playwright-core';
import { fillIn, goOn } from '../app/answering.ts';
import { fillDevice } from '../app/long-log.ts';
import { type Figure, quantile, report } from '../app/report.ts';
import { answerable, openSite, type Site, slowed, watchEnter } from '../app/site.ts';
import { withBarePage } from '../../../src/scripts/size.js';
import { slowProcessor } from '../../browser/slow-device.ts';

const answers = 69;

/** How soon the verdict and the next task are painted in a run, and what blocks it longest. */
export async function run(site: Site, script: string): Promise<void> {
	const device = await site.newDevice();
	await fillDevice(device, script, 5000);
	const page = await device.newPage();
	await page.goto('/practice/');
	await slowProcessor(page);
	await noteBlocks(page);
	const verdicts: number[] = [];
	const sentences: number[] = [];
	const tasks: number[] = [];
	for (let n = 0; n < answers; n++) {
		await fillIn(page, n % 2 === 0);
		const stamp = await watchEnter(page, '[role="status"]');
		const sentence = await watchEnter(page, '[role="status"]', '[role="status"] p');
		await page.keyboard.press('Enter');
		verdicts.push(await stamp());
		sentences.push(await sentence());
		await page.getByText('Saved on this device.').waitFor();
		await page.locator('[data-next]').focus();
		const next = await watchEnter(page, 'main', answerable);
		await goOn(page, () => page.keyboard.press('Enter'));
		tasks.push(await next());
	}
	const bare = await withBarePage(bareTimes);
	const blocks = await page.evaluate(() => (window as Blocked).blocks ?? []);
	report(
		`A run, ${slowed}`,
		`From Enter to the painted stamp, sentence or task, with 5,000 attempts in the log; ${answers} answers, every other one wrong. Tasks of the main thread that Chromium calls long are those over 50 ms.`,
		[
			...timesOf('a bare SvelteKit page, Enter to a changed word', bare),
			...timesOf('Enter to verdict', verdicts, 50, 100),
			...timesOf('Enter to its sentence', sentences),
			...timesOf('next task', tasks, 100),
			{ what: 'long tasks', value: blocks.length, unit: '' },
			{ what: 'longest task', value: Math.max(0, ...blocks), unit: 'ms', most: 50 }
		]
	);
	await device.close();
}

/** From Enter to one changed word of a page that does nothing else. */
async function bareTimes(folder: string): Promise<number[]> {
	const site = await openSite(folder);
	const device = await site.blankDevice();
	const page = await device.newPage();
	await page.goto('/enter.html');
	await page.locator('[data-ready="true"]').focus();
	await slowProcessor(page);
	const times: number[] = [];
	for (let n = 0; n < answers; n++) {
		const changed = await watchEnter(page, '[role="status"]');
		await page.keyboard.press('Enter');
		times.push(await changed());
	}
	await site.close();
	return times;
}

function timesOf(
	what: string,
	times: readonly number[],
	most?: number,
	slowest?: number
): Figure[] {
	return [
		{ what: `${what}, median`, value: quantile(times, 0.5), unit: 'ms' },
		{
			what: `${what}, 95th percentile`,
			value: quantile(times, 0.95),
			unit: 'ms',
			...(most === undefined ? {} : { most })
		},
		{
			what: `${what}, slowest`,
			value: quantile(times, 1),
			unit: 'ms',
			...(slowest === undefined ? {} : { most: slowest })
		}
	];
}

interface Blocked {
	blocks?: number[];
}

/** Keeps the milliseconds of every long task of the page, from here on. */
function noteBlocks(page: Page): Promise<void> {
	return page.evaluate(() => {
		const blocks: number[] = [];
		(window as Blocked).blocks = blocks;
		const watch = new PerformanceObserver((list) =>
			blocks.push(...list.getEntries().map(({ duration }) => duration))
		);
		watch.observe({ type: 'longtask' });
	});
}
