import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { site } from '../../../src/scripts/build.js';
import { chromiumFlags, requireChromium } from '../../../src/scripts/chromium.js';
import { serve } from '../../../src/scripts/serve.js';

/** The built site in a headless Chromium. */
export interface Site {
	/** A device of its own: nothing in it, the app installed for offline use. */
	newDevice(): Promise<BrowserContext>;
	close(): Promise<void>;
}

export async function openSite(): Promise<Site> {
	const server = await serve({ folder: site, port: 0, host: '127.0.0.1' });
	const browser: Browser = await chromium.launch({
		executablePath: requireChromium(),
		args: chromiumFlags
	});
	return {
		async newDevice() {
			const context = await browser.newContext({ baseURL: `http://localhost:${server.port}` });
			const page = await context.newPage();
			await page.goto('/');
			await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
			await page.locator('.ask button').waitFor();
			await page.close();
			return context;
		},
		async close() {
			await browser.close();
			server.close();
		}
	};
}

/** On the first page: what the plan holds for today. */
export const planShown = '[data-today]';
/** On the practice page: a task that can be answered. */
export const answerable = '[data-answer], [data-answer-choice]';

/** Slows the page's processor down, from here on. */
export async function slowDown(page: Page, times: number): Promise<void> {
	const session = await page.context().newCDPSession(page);
	await session.send('Emulation.setCPUThrottlingRate', { rate: times });
}

interface Timed {
	timed?: number;
}

/** Milliseconds from the start of a navigation until something is painted. */
export async function untilPainted(page: Page, path: string, selector: string): Promise<number> {
	await page.addInitScript((wanted) => {
		const watch = new MutationObserver(() => {
			if (!document.querySelector(wanted)) return;
			watch.disconnect();
			requestAnimationFrame(() => setTimeout(() => ((window as Timed).timed = performance.now())));
		});
		watch.observe(document, { childList: true, subtree: true });
	}, selector);
	await page.goto(path, { waitUntil: 'commit' });
	const found = await page.waitForFunction(() => (window as Timed).timed);
	return (await found.jsonValue()) ?? NaN;
}

/**
 * Milliseconds from the next press of Enter until the change it makes below `selector` has been
 * painted. Called before the key is pressed; the promise inside tells afterwards.
 */
export async function watchEnter(page: Page, selector: string): Promise<() => Promise<number>> {
	await page.evaluate((wanted) => {
		delete (window as Timed).timed;
		const onKey = (event: KeyboardEvent) => {
			if (event.key !== 'Enter') return;
			removeEventListener('keydown', onKey, { capture: true });
			const watch = new MutationObserver(() => {
				watch.disconnect();
				requestAnimationFrame(() =>
					setTimeout(() => ((window as Timed).timed = performance.now() - event.timeStamp))
				);
			});
			for (const element of document.querySelectorAll(wanted))
				watch.observe(element, { childList: true, subtree: true, characterData: true });
		};
		addEventListener('keydown', onKey, { capture: true });
	}, selector);
	return async () => {
		const found = await page.waitForFunction(() => (window as Timed).timed);
		return (await found.jsonValue()) ?? NaN;
	};
}
