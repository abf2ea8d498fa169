import { mkdtempSync, readdirSync, rmSync, statSync, truncateSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, inject, onTestFinished, test } from 'vitest';
import { logged } from './dump.ts';
import { startKillable } from './killable.ts';

/*
 * What a kill in the middle of a write does to the browser's files, done by hand: the last record
 * is cut short. The browser writes on behind it, and throws the file away the time after.
 */

/** What holds the databases, and how a page asks for them. */
const places = {
	log: { path: /^Default\/IndexedDB\/.+\.log$/, factory: 'indexedDB' },
	copy: {
		path: /^Default\/WebStorage\/.+\.log$/,
		factory: `(await navigator.storageBuckets.open('bucktail-copy')).indexedDB`
	}
};

test.skipIf(process.platform === 'win32').each(['log', 'copy'] as const)(
	'when the browser throws away the damaged file of the %s, no attempt is missing',
	async (place) => {
		const profile = mkdtempSync(join(tmpdir(), 'bucktail-torn-'));
		onTestFinished(() => rmSync(profile, { recursive: true, force: true }));
		const { path, factory } = places[place];

		await live(profile, async (page) => {
			await answer(page, '9.0001 in');
			await page.evaluate(`(async () => { ${factory}.open('marker') })()`);
			await expect.poll(() => databases(page, factory)).toContain('marker');
		});
		for (const file of filesIn(profile, path)) truncateSync(file, statSync(file).size - 3);
		await live(profile, (page) => answer(page, '9.0002 in'));
		await live(profile, async (page) => {
			await answer(page, '9.0003 in');
			const typed = (await logged(page, 'attempt')).flatMap((one) => Object.values(one.typed));
			expect(typed).toEqual(['9.0001 in', '9.0002 in', '9.0003 in']);
			// Or nothing was thrown away, and this shows nothing.
			expect(await databases(page, factory)).not.toContain('marker');
		});
	}
);

/** One life of the browser, ended by a kill. */
async function live(profile: string, work: (page: Page) => Promise<void>): Promise<void> {
	const { context, kill } = await startKillable(profile);
	try {
		const page = await context.newPage();
		await page.goto(`${inject('site')}/practice/?task=BS1-00S1-54`);
		await work(page);
	} finally {
		await kill();
	}
}

async function answer(page: Page, typed: string): Promise<void> {
	await page.locator('[data-answer]').fill(typed);
	await page.keyboard.press('Enter');
	await page.getByText('Saved on this device.').waitFor();
}

function databases(page: Page, factory: string): Promise<string[]> {
	return page.evaluate(`(async () => (await ${factory}.databases()).map(({ name }) => name))()`);
}

function filesIn(profile: string, path: RegExp): string[] {
	const found = readdirSync(profile, { recursive: true, encoding: 'utf8' }).filter((name) =>
		path.test(name)
	);
	expect(found).not.toEqual([]);
	return found.map((name) => join(profile, name));
}
