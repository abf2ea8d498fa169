import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { site } from '../../src/scripts/build.js';
import { top } from '../../src/scripts/project.js';
import { openTask } from './keyboard.ts';
import { untilKept } from './settled.ts';
import { test } from './site-test.ts';

test('after one visit the app opens and works without a network', async ({ openPage, faults }) => {
	const page = await openPage({ own: true });
	await page.goto('/');
	await untilKept(page);
	await page.context().setOffline(true);
	await page.goto('/practice/?task=RL1-00C8-8D');
	expect((await openTask(page)).number).toBe('RL1-00C8-8D');
	expect(await sourcesOfScripts(page)).toEqual(['cache']);
	// Arithmetic loads its reader from the device too.
	await page.locator('[data-answer="length"]').fill('1/8+1/16+1/8');
	await page.getByText('5/16 in').first().waitFor();
	await page.getByRole('button', { name: 'Charts' }).click();
	await page.getByRole('dialog').getByRole('grid').waitFor();
	await page.goto('/practice?task=RL1-00C8-8D');
	expect(new URL(page.url()).pathname).toBe('/practice/');
	expect((await openTask(page)).number).toBe('RL1-00C8-8D');
	await page.goto('/rules/');
	await page.getByRole('heading', { name: 'Rules and sources' }).waitFor();
	expect(faults).toEqual([]);
});

/** Where the scripts came from, each source once: `fetch-event` would be the worker. */
function sourcesOfScripts(page: Page): Promise<(string | undefined)[]> {
	return page.evaluate(() => {
		const files: (PerformanceEntry & { workerFinalSourceType?: string })[] =
			performance.getEntriesByType('resource');
		const scripts = files.filter(({ name }) => name.endsWith('.js'));
		return [...new Set(scripts.map(({ workerFinalSourceType }) => workerFinalSourceType))];
	});
}

test('the licences of what ships are in the build', () => {
	const { dependencies } = JSON.parse(readFileSync(join(top, 'package.json'), 'utf8'));
	const texts = readFileSync(join(site, 'licenses.md'), 'utf8');
	for (const name of Object.keys(dependencies)) expect(texts).toContain(`## ${name} - `);
});
