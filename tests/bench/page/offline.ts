import type { BrowserContext } from 'playwright-core';
import { median, report } from '../app/report.ts';
import { answerable, type Site, slowed, untilPainted, welcome } from '../app/site.ts';
import { slowProcessor } from '../../browser/slow-device.ts';

const rounds = 9;

const starts = [
	{ what: 'task answerable', path: '/practice/?task=RL1-00C8-8D', until: answerable, most: 500 },
	{ what: 'first page', path: '/', until: welcome, most: 600 }
];

/** How soon the app can be worked with while the network is off. */
export async function offline(site: Site): Promise<void> {
	const device = await site.newDevice();
	await device.setOffline(true);
	const figures = [];
	for (const { what, path, until, most } of starts) {
		const times: number[] = [];
		for (let round = 0; round < rounds; round++) times.push(await oneStart(device, path, until));
		figures.push({ what, value: median(times), unit: 'ms', most });
	}
	report(
		`Start without a network, ${slowed}`,
		`From the start of the navigation to the paint; medians of ${rounds}.`,
		figures
	);
	await device.close();
}

async function oneStart(device: BrowserContext, path: string, until: string): Promise<number> {
	const page = await device.newPage();
	// On the site already, so that the slowed process is the one that starts the page.
	await page.goto('/manifest.webmanifest');
	await slowProcessor(page);
	const took = await untilPainted(page, path, until);
	await page.close();
	return took;
}
