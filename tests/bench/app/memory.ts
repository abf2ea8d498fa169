import type { Page } from 'playwright-core';
import { openWhole } from '../../browser/keyboard.ts';
import { fillIn, goOn } from './answering.ts';
import { report } from './report.ts';
import type { Site } from './site.ts';

const tasks = 500;
const step = 100;
/** Tasks until everything has been loaded once. */
const warmUp = 40;

/** Whether memory stays flat over a long sitting in one page. */
export async function memory(site: Site): Promise<void> {
	const device = await site.newDevice();
	const page = await device.newPage();
	await page.goto('/practice/');
	const figures = [];
	const sizes: number[] = [];
	for (let done = 0; done <= warmUp + tasks; done++) {
		if (done >= warmUp && (done - warmUp) % step === 0) {
			const { megabytes, nodes } = await inUse(page);
			sizes.push(megabytes);
			const what = `after ${done - warmUp} tasks (${nodes} nodes)`;
			figures.push({ what, value: megabytes, unit: 'MB' });
		}
		await openWhole(page);
		await fillIn(page, done % 2 === 0);
		await page.keyboard.press('Enter');
		await page.locator('.stamp').waitFor();
		await goOn(page);
	}
	const spread = (Math.max(...sizes) - Math.min(...sizes)) / 2;
	report(
		'Memory over 500 tasks',
		`JavaScript in use after a forced collection, in one page; counted after ${warmUp} tasks, when everything is loaded.`,
		[...figures, { what: 'spread, ±', value: spread, unit: 'MB', most: 5 }]
	);
	await device.close();
}

async function inUse(page: Page): Promise<{ megabytes: number; nodes: number }> {
	const session = await page.context().newCDPSession(page);
	await session.send('HeapProfiler.collectGarbage');
	const { usedSize } = await session.send('Runtime.getHeapUsage');
	const { nodes } = await session.send('Memory.getDOMCounters');
	await session.detach();
	return { megabytes: usedSize / 1e6, nodes };
}
