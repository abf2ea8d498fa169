import {
	cpSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	renameSync,
	rmSync,
	writeFileSync
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { site } from '../../src/scripts/build.js';
import { serve } from '../../src/scripts/serve.js';
import { openTask } from './keyboard.ts';
import { test } from './site-test.ts';

test('a page that was open before an update keeps what it fetches late', async ({ openPage }) => {
	const host = mkdtempSync(join(tmpdir(), 'update-'));
	cpSync(site, host, { recursive: true });
	const server = await serve({ folder: host, port: 0, host: '127.0.0.1' });
	try {
		// The policy names the scripts within the pages by their hash, which renaming changes.
		const baseURL = `http://localhost:${server.port}`;
		const page = await openPage({ baseURL, own: true, bypassCSP: true });
		await page.goto('/rules/');
		await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
		await page.goto('/practice/?task=RL1-00C8-8D');
		await openTask(page);
		// The files of two versions later stand under other names, and those of today are gone.
		for (const folder of ['immutab1e', 'immutab2e']) {
			renew(host, folder);
			await takeOver(page);
		}
		expect(
			await page.evaluate(() => fetch('/practice/').then((answer) => answer.text()))
		).toContain('immutab2e');
		// A host may forbid the browser to keep anything of its own.
		const tools = await page.context().newCDPSession(page);
		await tools.send('Network.clearBrowserCache');
		await page.locator('[data-answer="length"]').fill('1/8+1/16+1/8');
		await page.getByText('5/16 in').first().waitFor();
		await page.getByText('A newer Bucktail is on this device').waitFor();
		await page.getByRole('button', { name: 'Reload' }).click();
		await page.waitForFunction(() => document.head.innerHTML.includes('immutab2e'));
		expect((await openTask(page)).number).toBe('RL1-00C8-8D');
		await page.close();
	} finally {
		server.close();
		rmSync(host, { recursive: true });
	}
});

/** Puts a version in place whose scripts have other names, all of them. */
function renew(host: string, folder: string): void {
	const app = join(host, '_app');
	const [old = ''] = readdirSync(app).filter((name) => name.startsWith('immut'));
	renameSync(join(app, old), join(app, folder));
	const { version } = JSON.parse(readFileSync(join(app, 'version.json'), 'utf8'));
	const files = readdirSync(host, { recursive: true, encoding: 'utf8' });
	for (const file of files.filter((name) => /\.(html|js|css|json)$/.test(name))) {
		const text = readFileSync(join(host, file), 'utf8');
		const renamed = text.replaceAll(`_app/${old}/`, `_app/${folder}/`);
		writeFileSync(join(host, file), renamed.replaceAll(version, String(Number(version) + 1)));
	}
}

/** Waits until the version that stands there now has taken over. */
async function takeOver(page: Page): Promise<void> {
	await page.evaluate(async () => {
		const taken = new Promise((resolve) => {
			navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true });
		});
		await (await navigator.serviceWorker.ready).update();
		await taken;
	});
}
