import { fillIn, goOn } from './answering.ts';
import { fillDevice } from './long-log.ts';
import { quantile, report } from './report.ts';
import { type Site, slowDown, watchEnter } from './site.ts';

const answers = 69;

/** How soon the verdict is painted, on a processor slowed down four times. */
export async function verdicts(site: Site, script: string): Promise<void> {
	const device = await site.newDevice();
	await fillDevice(device, script, 5000);
	const page = await device.newPage();
	await page.goto('/practice/');
	await slowDown(page, 4);
	const times = [];
	for (let n = 0; n < answers; n++) {
		await fillIn(page, n % 2 === 0);
		const took = await watchEnter(page, '[role="status"]');
		await page.keyboard.press('Enter');
		times.push(await took());
		await page.getByText('Saved on this device.').waitFor();
		await goOn(page);
	}
	report(
		'Verdict on a 4× slowed processor',
		`From Enter to the painted verdict, with 5,000 attempts in the log; ${answers} answers, every other one wrong.`,
		[
			{ what: 'median', value: quantile(times, 0.5), unit: 'ms' },
			{ what: '95th percentile', value: quantile(times, 0.95), unit: 'ms', most: 50 },
			{ what: 'slowest', value: quantile(times, 1), unit: 'ms', most: 100 }
		]
	);
	await device.close();
}
