import { createHash, X509Certificate } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { expect, test } from 'vitest';
import { site } from '../../src/scripts/build.js';
import { certificateFor } from '../../src/scripts/certificate.js';
import { chromiumFlags, findChromium } from '../../src/scripts/chromium.js';
import { serve } from '../../src/scripts/serve.js';

test('by https a device of the network has all that localhost has, offline too', async () => {
	const folder = mkdtempSync(join(tmpdir(), 'https-'));
	const certificate = certificateFor([], folder);
	const server = await serve({ folder: site, port: 0, host: '127.0.0.1', certificate });
	// Stands for the authority that a device has taken up: without it the worker is refused.
	const { publicKey } = new X509Certificate(certificate.cert);
	const key = createHash('sha256').update(publicKey.export({ type: 'spki', format: 'der' }));
	const browser = await chromium.launch({
		executablePath: findChromium(),
		args: [...chromiumFlags, `--ignore-certificate-errors-spki-list=${key.digest('base64')}`]
	});
	try {
		const context = await browser.newContext({ baseURL: `https://127.0.0.1:${server.port}` });
		const page = await context.newPage();
		await page.goto('/rules/');
		expect(
			await page.evaluate(() => [isSecureContext, 'randomUUID' in crypto, 'storage' in navigator])
		).toEqual([true, true, true]);
		await page.evaluate(async () => navigator.serviceWorker.ready);
		server.close();
		await page.goto('/practice/?task=RL1-00C8-8D');
		await page.locator('[data-answer]').first().waitFor();
	} finally {
		await browser.close();
		server.close();
		rmSync(folder, { recursive: true });
	}
});
