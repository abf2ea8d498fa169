import type { BrowserContext } from 'playwright-core';
import { fillDevice } from './long-log.ts';
import { median, report } from './report.ts';
import { answerable, planShown, type Site, untilPainted, welcome } from './site.ts';

const attempts = 50_000;
const rounds = 9;

/** How much slower the app starts with a long log than with an empty one. */
export async function startUp(site: Site, script: string): Promise<void> {
	const [empty, full] = [await site.newDevice(), await site.newDevice()];
	const first = await fillDevice(full, script, attempts);
	const starts = [
		{ what: 'first task answerable', path: '/practice/?task=RL1-00C8-8D', until: answerable },
		// Without a history the first page asks a newcomer its question.
		{ what: 'first page shown', path: '/', until: `${planShown}, ${welcome}` }
	];
	const figures = [];
	for (const { what, path, until } of starts) {
		const times = { empty: [] as number[], full: [] as number[] };
		for (let round = 0; round < rounds; round++) {
			times.empty.push(await oneStart(empty, path, until));
			times.full.push(await oneStart(full, path, until));
		}
		const [before, after] = [median(times.empty), median(times.full)];
		figures.push(
			{ what: `${what}, empty store`, value: before, unit: 'ms' },
			{ what: `${what}, 50,000 attempts`, value: after, unit: 'ms' },
			{ what: `${what}, ratio`, value: after / before, unit: '', most: 1.2 }
		);
	}
	report(
		'Start-up with a long log',
		`From the start of the navigation to the paint; medians of ${rounds} starts of each, taking turns.`,
		[...figures, { what: 'once after an update: the log is folded anew', value: first, unit: 'ms' }]
	);
	await Promise.all([empty.close(), full.close()]);
}

async function oneStart(device: BrowserContext, path: string, until: string): Promise<number> {
	const page = await device.newPage();
	const took = await untilPainted(page, path, until);
	await page.close();
	return took;
}
