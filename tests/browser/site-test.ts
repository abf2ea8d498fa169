import { type Browser, chromium, type Page } from 'playwright-core';
import { expect, inject, test as base } from 'vitest';
import { chromiumFlags, findChromium } from '../../src/scripts/chromium.js';
import { type Visitor, Visitors } from './visitors.ts';

interface SiteFixtures {
	/** One headless Chromium for many test files; it reaches no other machine. */
	browser: Browser;
	/** Its pages, handed from one test to the next. */
	visitors: Visitors;
	/** What went wrong on any page so far. A test that means it to takes the entry out. */
	faults: string[];
	/** Opens a page as a new visitor: `page.goto('/')` is the first page of the built site. */
	openPage: (visitor?: Visitor) => Promise<Page>;
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
	visitors: [
		async ({ browser }, use) => use(new Visitors(browser, inject('site'))),
		{ scope: 'worker' }
	],
	faults: async ({}, use) => {
		const faults: string[] = [];
		await use(faults);
		expect(faults.join('\n')).toBe('');
	},
	openPage: async ({ visitors, faults }, use) => {
		const visits: Awaited<ReturnType<Visitors['open']>>[] = [];
		await use(async (visitor = {}) => {
			const visit = await visitors.open(visitor, (fault) => faults.push(fault));
			visits.push(visit);
			return visit.page;
		});
		for (const visit of visits) await visitors.end(visit);
	}
});
