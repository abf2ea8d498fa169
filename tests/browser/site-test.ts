import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { expect, inject, test as base } from 'vitest';
import { chromiumFlags, findChromium } from '../../src/scripts/chromium.js';
import { collectFaults } from './faults.ts';

interface SiteFixtures {
	/** One headless Chromium for many test files; it reaches no other machine. */
	browser: Browser;
	/** What went wrong on any page so far. A test that means it to takes the entry out. */
	faults: string[];
	/** Opens a page as a new visitor: `page.goto('/')` is the first page of the built site. */
	openPage: (visitor?: BrowserContextOptions) => Promise<Page>;
}

/**
 * The address of the built site under a name that is not localhost: over plain http a browser then
 * leaves out what it keeps for secure pages, as on every other device of a local network.
 */
export function plainSite(): string {
	return inject('site').replace('localhost', plainHost);
}

const plainHost = 'bench.test';
const hosts = [`MAP ${plainHost} 127.0.0.1`, 'MAP * ~NOTFOUND', 'EXCLUDE localhost'].join(', ');

/**
 * A test on the built site. It fails when a page logs an error, throws, or asks another origin for
 * anything.
 */
export const test = base.extend<SiteFixtures>({
	browser: [
		async ({}, use) => {
			const args = [...chromiumFlags, `--host-resolver-rules=${hosts}`];
			const browser = await chromium.launch({ executablePath: findChromium(), args });
			await use(browser);
			await browser.close();
		},
		{ scope: 'worker' }
	],
	faults: async ({}, use) => {
		const faults: string[] = [];
		await use(faults);
		expect(faults).toEqual([]);
	},
	openPage: async ({ browser, faults }, use) => {
		const close: (() => Promise<void>)[] = [];
		await use(async (visitor) => {
			const baseURL = visitor?.baseURL ?? inject('site');
			const context = await browser.newContext({ ...visitor, baseURL });
			close.push(() => context.close());
			collectFaults(context, baseURL, faults);
			return context.newPage();
		});
		for (const end of close) await end();
	}
});
