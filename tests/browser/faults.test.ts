import { expect, inject } from 'vitest';
import { collectFaults } from './faults.ts';
import { test } from './site-test.ts';

// The answer to an unknown address has no content security policy: its scripts may do anything.
const lawless = '/no-such-page/';

const wrongs: [fault: string, wrong: () => void][] = [
	['logged: oh', () => console.error('oh')],
	['threw: ah', () => void setTimeout(() => Promise.reject(new Error('ah')))],
	['asked for: https://example.org/x', () => void fetch('https://example.org/x').catch(() => {})],
	[
		'asked for: https://example.org/x.png',
		() => void (new Image().src = 'https://example.org/x.png')
	],
	['opened: wss://example.org/x', () => void new WebSocket('wss://example.org/x')]
];

test.for(wrongs)('a page is found out that did this: %s', async ([fault, wrong], { browser }) => {
	const faults: string[] = [];
	const context = await browser.newContext({ baseURL: inject('site') });
	collectFaults(context, inject('site'), (found) => faults.push(found));
	const page = await context.newPage();
	await page.goto(lawless);
	await page.evaluate(wrong);
	await expect.poll(() => faults).toContain(fault);
	await context.close();
});

test('a page may ask its own site', async ({ openPage, faults }) => {
	const page = await openPage();
	await page.goto('/');
	await page.evaluate(() => fetch('/'));
	expect(faults).toEqual([]);
});
