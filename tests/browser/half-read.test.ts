import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject } from 'vitest';
import { site } from '../../src/scripts/build.js';
import { test } from './site-test.ts';

/** Milliseconds that the second half of the first page is on its way after the first. */
const late = 700;

// The sheet is as high as the window: painted before its foot was read, the drawing stood lower.
test('the first page is not shown while half of it is on its way', async ({ openPage }) => {
	const text = readFileSync(join(site, 'index.html'));
	// Within the sheet, so that its foot comes with the rest.
	const middle = text.indexOf('<form class="ask');
	expect(middle).toBeGreaterThan(0);
	const server = createServer(async (request, response) => {
		if (request.url !== '/') {
			const whole = await fetch(new URL(request.url ?? '', inject('site')));
			response.writeHead(whole.status, { 'Content-Type': whole.headers.get('content-type') ?? '' });
			response.end(Buffer.from(await whole.arrayBuffer()));
			return;
		}
		response.writeHead(200, { 'Content-Type': 'text/html' });
		response.write(text.subarray(0, middle));
		setTimeout(() => response.end(text.subarray(middle)), late);
	});
	await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
	try {
		const { port } = server.address() as AddressInfo;
		const page = await openPage({ baseURL: `http://localhost:${port}`, javaScriptEnabled: false });
		await page.goto('/', { waitUntil: 'load' });
		// Has the window painted, if nothing else did; a page without scripts has no timers to wait by.
		await page.screenshot();
		const painted = await page.evaluate(
			() => performance.getEntriesByName('first-paint')[0]?.startTime ?? 0
		);
		expect(painted).toBeGreaterThan(late * 0.9);
	} finally {
		server.closeAllConnections();
		server.close();
	}
});
