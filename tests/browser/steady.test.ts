import { expect } from 'vitest';
import { untilQuiet } from './settled.ts';
import { test } from './site-test.ts';
import { slowNetwork, slowProcessor } from './slow-device.ts';

const paths = [
	'/',
	'/practice/',
	'/plan/',
	'/lessons/',
	'/check/',
	'/rehearsal/',
	'/sets/',
	'/progress/',
	'/panel/',
	'/panel/time/'
];

test.for(paths)(
	'%s opens on a slow phone without moving what stands there',
	async (path, { openPage }) => {
		const page = await openPage({ own: true, viewport: { width: 360, height: 740 } });
		await slowProcessor(page);
		await slowNetwork(page);
		await page.addInitScript(noteShifts);
		await page.goto(path);
		await page.locator('h1').first().waitFor();
		await untilQuiet(page);
		expect(await page.evaluate<number>('shifted')).toBeLessThan(0.01);
	}
);

/** Runs in the page: sums how far parts of it were moved. */
function noteShifts(): void {
	Object.assign(globalThis, { shifted: 0 });
	new PerformanceObserver((list) => {
		for (const entry of list.getEntries()) {
			const { value } = entry as PerformanceEntry & { readonly value: number };
			Object.assign(globalThis, { shifted: (globalThis as unknown as Shifted).shifted + value });
		}
	}).observe({ type: 'layout-shift', buffered: true });

	interface Shifted {
		readonly shifted: number;
	}
}
