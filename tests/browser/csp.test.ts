import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect } from 'vitest';
import { site } from '../../src/scripts/build.js';
import { test } from './site-test.ts';

const pages = readdirSync(site, { recursive: true, encoding: 'utf8' }).filter((path) =>
	path.endsWith('.html')
);

describe.each(pages)('the content security policy of %s', (path) => {
	const directives = policyIn(readFileSync(join(site, path), 'utf8'));

	test('starts from nothing', () => {
		expect(directives.get('default-src')).toEqual(["'none'"]);
	});

	test('lets only the site and scripts of known content run', () => {
		const sources = directives.get('script-src') ?? [];
		expect(sources).toContain("'self'");
		expect(sources.filter((source) => !/^'(self|sha256-.+)'$/.test(source))).toEqual([]);
	});

	test('names no other origin', () => {
		const sources = [...directives.values()].flat();
		expect(sources.filter((source) => !/^'.*'$|^data:$/.test(source))).toEqual([]);
	});
});

test('the first page refuses to run text', async ({ openPage, faults }) => {
	const page = await openPage();
	await page.goto('/');
	await page.evaluate(() => {
		const script = document.createElement('script');
		script.textContent = 'document.title = "ran"';
		document.body.append(script);
		// Later, because the policy does not bind what the test itself evaluates.
		// eslint-disable-next-line no-implied-eval
		setTimeout('document.title = "ran"');
	});

	await expect.poll(() => faults.length).toBe(2);
	for (const fault of faults.splice(0)) expect(fault).toContain('Content Security Policy');
	expect(await page.title()).not.toBe('ran');
});

/** The directives of a page's policy, each with its sources. */
function policyIn(html: string) {
	const [, policy = ''] =
		/<meta http-equiv="content-security-policy" content="([^"]*)">/i.exec(html) ?? [];
	const directives = policy.split(';').map((directive) => directive.trim().split(/\s+/));
	return new Map(directives.map(([name = '', ...sources]) => [name, sources]));
}
