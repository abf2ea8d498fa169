import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import { site } from './build.js';
import { chromiumFlags, requireChromium } from './chromium.js';
import { serve } from './serve.js';

/**
 * What Chromium really fetches, with nothing kept from before, until a task of each number can be
 * answered: JavaScript after gzip -9, file by file.
 *
 * @param {readonly string[]} numbers task numbers
 * @returns {Promise<{ number: string, bytes: number, files: number }[]>}
 */
export async function untilAnswerable(numbers) {
	const server = await serve({ folder: site, port: 0, host: '127.0.0.1' });
	const browser = await chromium.launch({
		executablePath: requireChromium(),
		args: chromiumFlags
	});
	try {
		const loads = [];
		for (const number of numbers) {
			const context = await browser.newContext({ serviceWorkers: 'block' });
			const page = await context.newPage();
			await page.addInitScript(noteLoads);
			await page.goto(`http://localhost:${server.port}/practice/?task=${number}`);
			await page.locator('[data-answer], [data-answer-choice]').first().waitFor();
			/** @type {string[]} */
			const scripts = await page.evaluate('loadsUntilAnswerable');
			const sizes = scripts.map(
				(path) => gzipSync(readFileSync(join(site, path)), { level: 9 }).length
			);
			loads.push({ number, bytes: sizes.reduce((a, b) => a + b, 0), files: sizes.length });
			await context.close();
		}
		return loads;
	} finally {
		await browser.close();
		server.close();
	}
}

/** Runs in the page: notes which scripts had come by the moment there was a field to answer in. */
function noteLoads() {
	const watcher = new MutationObserver(() => {
		if (!document.querySelector('[data-answer], [data-answer-choice]')) return;
		watcher.disconnect();
		const loads = performance
			.getEntriesByType('resource')
			.map(({ name }) => new URL(name).pathname);
		Object.assign(globalThis, {
			loadsUntilAnswerable: [...new Set(loads.filter((path) => path.endsWith('.js')))]
		});
	});
	watcher.observe(document, { childList: true, subtree: true });
}
