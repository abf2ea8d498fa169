import type { Page } from 'playwright-core';
import { isoOf } from '../../../src/lib/engine/schedule/day.ts';
import { fillDevice, inPage } from './long-log.ts';
import { median, quantile, report } from './report.ts';
import { type Site, watchEnter } from './site.ts';
import { slowProcessor } from '../../browser/slow-device.ts';

const rounds = 15;
const most = 100;

/** What a change of the plan takes, and a fold, on a processor slowed down four times. */
export async function replan(site: Site, script: string): Promise<void> {
	const device = await site.newDevice();
	await fillDevice(device, script, 5000);
	const page = await device.newPage();
	await page.goto('/plan/');
	const exam = Math.floor(Date.now() / 86_400_000) + 60;
	await page.getByLabel('Day of the exam').fill(isoOf(exam));
	await page.getByLabel('Minutes a day').fill('30');
	await page.keyboard.press('Enter');
	await slowProcessor(page);
	const times = [];
	for (let round = 0; round < rounds; round++) times.push(await oneChange(page, 20 + round));
	const folds = [];
	for (let round = 0; round < rounds; round++) {
		folds.push(await inPage(page, script, (bench, samples, n) => bench.foldTime(samples, n), 1000));
	}
	report(
		'Re-planning on a 4× slowed processor',
		`Minutes a day changed, 60 days before the exam, from Enter to the painted numbers; ${rounds} times.`,
		[
			{ what: 're-plan, median', value: median(times), unit: 'ms', most },
			{ what: 're-plan, slowest', value: quantile(times, 1), unit: 'ms' },
			{ what: 'fold of 1,000 attempts, median', value: median(folds), unit: 'ms', most }
		]
	);
	await device.close();
}

async function oneChange(page: Page, minutes: number): Promise<number> {
	await page.getByLabel('Minutes a day').fill(String(minutes));
	// Typing may re-plan by itself after a while; what is measured is the change at once.
	const took = await watchEnter(page, '.plan, .lead');
	await page.keyboard.press('Enter');
	const ms = await took();
	await page.waitForTimeout(400);
	return ms;
}
