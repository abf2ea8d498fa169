import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { site } from '../../../src/scripts/build.js';
import { chromiumFlags, requireChromium } from '../../../src/scripts/chromium.js';
import { serve } from '../../../src/scripts/serve.js';

/** The built site in a headless Chromium. */
export interface Site {
	/** A device of its own: nothing in it, the app installed for offline use. */
	newDevice(): Promise<BrowserContext>;
	/** One that was never here. */
	blankDevice(): Promise<BrowserContext>;
	close(): Promise<void>;
}

export async function openSite(folder = site): Promise<Site> {
	const server = await serve({ folder, port: 0, host: '127.0.0.1' });
	const browser: Browser = await chromium.launch({
		executablePath: requireChromium(),
		args: chromiumFlags
	});
	const blankDevice = () => browser.newContext({ baseURL: `http://localhost:${server.port}` });
	return {
		blankDevice,
		async newDevice() {
			const context = await blankDevice();
			const page = await context.newPage();
			await page.goto('/');
			await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
			await page.locator(welcome).waitFor();
			await page.close();
			return context;
		},
		async close() {
			await browser.close();
			server.close();
		}
	};
}

/** On the first page of a newcomer: its question. */
export const welcome = '.ask button';
/** On the first page: what the plan holds for today. */
export const planShown = '[data-today]';
/** On the practice page: a task that can be answered. */
export const answerable = '[data-answer], [data-answer-choice]';

/** What `slowProcessor` makes of a page, in words. */
export const slowed = 'on a 4× slowed processor';

/*
 * A page tells its times by its console: a driver that looks into it puts scripts of its own there,
 * which take a slowed thread for a tenth of a second, in the midst of what is measured.
 */

/** The milliseconds that a page tells next under a name. */
async function heard(page: Page, name: string): Promise<number> {
	const start = `${name}: `;
	const message = await page.waitForEvent('console', (one) => one.text().startsWith(start));
	return Number(message.text().slice(start.length));
}

/** Milliseconds from the start of a navigation until something is painted. */
export async function untilPainted(page: Page, path: string, selector: string): Promise<number> {
	await page.addInitScript((wanted) => {
		const watch = new MutationObserver(() => {
			if (!document.querySelector(wanted)) return;
			watch.disconnect();
			requestAnimationFrame(() =>
				setTimeout(() => console.debug(`${wanted}: ${performance.now()}`))
			);
		});
		watch.observe(document, { childList: true, subtree: true });
	}, selector);
	const took = heard(page, selector);
	await page.goto(path, { waitUntil: 'commit' });
	return took;
}

/**
 * Milliseconds from the next press of Enter until a change it makes below `selector` has been
 * painted. Called before the key is pressed; the promise inside tells afterwards. Several may be
 * watched at once.
 *
 * @param replaced only the change counts after which the first element of this selector is another
 */
export async function watchEnter(
	page: Page,
	selector: string,
	replaced?: string
): Promise<() => Promise<number>> {
	const name = `${selector} ${replaced ?? ''}`;
	await page.evaluate(
		([name, wanted, replaced]) => {
			const first = () => (replaced === null ? null : document.querySelector(replaced));
			const before = first();
			const isThere = () => replaced === null || (first() !== null && first() !== before);
			const onKey = (event: KeyboardEvent) => {
				if (event.key !== 'Enter') return;
				removeEventListener('keydown', onKey, { capture: true });
				const watch = new MutationObserver(() => {
					if (!isThere()) return;
					watch.disconnect();
					requestAnimationFrame(() =>
						setTimeout(() => console.debug(`${name}: ${performance.now() - event.timeStamp}`))
					);
				});
				for (const element of document.querySelectorAll(wanted))
					watch.observe(element, { childList: true, subtree: true, characterData: true });
			};
			addEventListener('keydown', onKey, { capture: true });
		},
		[name, selector, replaced ?? null] as const
	);
	const took = heard(page, name);
	return () => took;
}
