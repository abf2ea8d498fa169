import { median, report } from './report.ts';
import { answerable, type Site, slowDown, untilPainted } from './site.ts';

const rounds = 9;
const most = 500;

/** How soon a task can be answered with the network off. */
export async function offlineStart(site: Site): Promise<void> {
	const device = await site.newDevice();
	await device.setOffline(true);
	const times: Record<number, number[]> = { 1: [], 4: [] };
	for (let round = 0; round < rounds; round++) {
		for (const slow of [1, 4]) {
			const page = await device.newPage();
			// On the site already, so that the slowed process is the one that starts the task.
			await page.goto('/manifest.webmanifest');
			await slowDown(page, slow);
			times[slow]?.push(await untilPainted(page, '/practice/?task=RL1-007S-3W', answerable));
			await page.close();
		}
	}
	report(
		'Start without a network',
		`From the start of the navigation to the painted task, network off; medians of ${rounds}.`,
		[
			{ what: 'this machine', value: median(times[1] ?? []), unit: 'ms', most },
			{ what: '4× slowed processor', value: median(times[4] ?? []), unit: 'ms', most }
		]
	);
	await device.close();
}
