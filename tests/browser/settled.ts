import type { Page } from 'playwright-core';

/**
 * Waits until a page has asked for nothing for a while. The driver's own count of open requests may
 * never come to nought where a service worker takes one over, and may before the last is asked for.
 */
export async function untilQuiet(page: Page): Promise<void> {
	await page.evaluate(async () => {
		const come = () => performance.getEntriesByType('resource').length;
		for (let before = -1; before !== come();) {
			before = come();
			await new Promise((done) => setTimeout(done, 1500));
		}
	});
}

/** Waits until the app is kept on the device, and its page draws on what is kept. */
export async function untilKept(page: Page): Promise<void> {
	await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}
