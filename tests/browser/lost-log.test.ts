import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { dayOf } from '../../src/lib/engine/schedule/day.ts';
import { openWithLog, someLog } from './seeded-log.ts';
import { test } from './site-test.ts';

/*
 * A browser that has lost its database: the log is put back from its copy while somebody is on the
 * page. They are told, nothing moves under their hands, and the focus stays where they put it.
 */

const today = dayOf('2026-11-27');
const log = await someLog({ start: today - 40, end: today, tasks: 20 });

/** Runs in the page: sums how far parts of it were moved, and keeps what it said of lost records. */
function watchHere(): void {
	const seen = { moved: 0, said: [] as string[] };
	Object.assign(globalThis, { seen });
	new PerformanceObserver((list) => {
		for (const entry of list.getEntries() as (PerformanceEntry & { value: number })[]) {
			seen.moved += entry.value;
		}
	}).observe({ type: 'layout-shift', buffered: true });
	new MutationObserver(() => {
		const [said] =
			/This browser lost its records[^.]*\./.exec(document.body?.innerText ?? '') ?? [];
		if (said !== undefined && !seen.said.includes(said)) seen.said.push(said);
	}).observe(document, { subtree: true, childList: true, characterData: true });
}

/** Pages that show what the log comes to, and what stands there once they do. */
const pages = [
	['/', 'What comes back, and why'],
	['/progress/', 'How far to trust these numbers'],
	['/plan/', 'Where you stand']
] as const;

interface Seen {
	readonly moved: number;
	readonly said: readonly string[];
}

const copy = `(await navigator.storageBuckets.open('bucktail-copy')).indexedDB`;

/** How many events stand in one of the two places of the log. */
function eventsIn(page: Page, place: string): Promise<number> {
	return page.evaluate(`(async () => {
		const wait = (request) => new Promise((done, fail) => {
			request.onsuccess = () => done(request.result);
			request.onerror = fail;
		});
		const place = ${place};
		// Opened before the page has made it, it would be an empty one.
		if ((await place.databases()).length === 0) return 0;
		const db = await wait(place.open('bucktail'));
		const count = db.objectStoreNames.contains('events')
			? await wait(db.transaction('events').objectStore('events').count())
			: 0;
		db.close();
		return count;
	})()`);
}

/** Puts the log into both of its places, and watches every page from then on. */
async function copied(page: Page): Promise<void> {
	await openWithLog(page, log, '/plan/');
	// What the log has more than its copy follows with the first thing that is written.
	await page.getByLabel('Minutes a day').fill('20');
	await page.keyboard.press('Enter');
	await expect.poll(() => eventsIn(page, copy)).toBe(log.length + 1);
	await page.addInitScript(watchHere);
}

/** Loses the database of the site, but not the copy of the log. */
async function lose(page: Page): Promise<void> {
	await page.goto('/panel-1.schema.json');
	await page.evaluate(async () => {
		await new Promise((resolve, reject) => {
			const removing = indexedDB.deleteDatabase('bucktail');
			removing.onsuccess = resolve;
			removing.onerror = reject;
		});
	});
}

test('a lost log is put back with a word, and nothing moves under the hands of who waits', async ({
	openPage
}) => {
	const page = await openPage({ own: true, time: '2026-11-27T10:00:00' });
	await copied(page);
	for (const [path, whole] of pages) {
		await lose(page);
		await page.goto(path, { waitUntil: 'commit' });
		const link = page.getByRole('link', { name: 'Rules' });
		await link.focus();
		await page.getByText(whole).first().waitFor();
		const { moved, said } = await page.evaluate<Seen>('seen');
		expect.soft(moved, path).toBeLessThan(0.01);
		expect.soft(said.join(), path).toMatch(/they are put back from their copy: \d+ percent/);
		expect.soft(await link.evaluate((one) => one === document.activeElement)).toBe(true);
	}
	await lose(page);
	await page.goto('/practice/?task=BS1-00S1-54');
	const field = page.locator('[data-answer]').first();
	await field.focus();
	await page.keyboard.type('9.0001 in');
	await expect.poll(() => eventsIn(page, 'indexedDB')).toBe(log.length + 1);
	expect(await field.inputValue()).toBe('9.0001 in');
	expect(await field.evaluate((one) => one === document.activeElement)).toBe(true);
	await page.keyboard.press('Enter');
	await page.getByText('Saved on this device.').waitFor();
	expect(await eventsIn(page, 'indexedDB')).toBe(log.length + 2);
});
