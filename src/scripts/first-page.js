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
			/** @type {Set<string>} */
			const scripts = new Set();
			page.on('request', (request) => {
				const { pathname } = new URL(request.url());
				if (pathname.endsWith('.js')) scripts.add(pathname);
			});
			await page.goto(`http://localhost:${server.port}/practice/?task=${number}`);
			await page.locator('[data-answer], [data-answer-choice]').first().waitFor();
			const sizes = [...scripts].map(
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
