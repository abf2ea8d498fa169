import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { isSound } from './axe.ts';
import { dump } from './dump.ts';
import { answerByKeyboard, openTask, openWhole, rightAnswers, wrongAnswers } from './keyboard.ts';
import { untilQuiet } from './settled.ts';
import { test } from './site-test.ts';

async function add(page: Page, nickname: string) {
	await page.goto('/learners/');
	await page.getByLabel('Nickname', { exact: true }).fill(nickname);
	await page.keyboard.press('Enter');
	await page.getByText(`${nickname} was added`).waitFor();
}

async function answer(page: Page, number: string, right: boolean) {
	await page.goto(`/practice/?task=${number}`);
	const task = await openTask(page);
	await answerByKeyboard(page, right ? rightAnswers(task) : wrongAnswers(task));
	await page.getByText('Saved on this device.').waitFor();
}

/** The text of the file that a button saves. */
async function saved(page: Page, button: string): Promise<string> {
	await page.goto('/learners/');
	const saving = page.waitForEvent('download');
	await page.getByRole('button', { name: button }).click();
	return readFileSync(await (await saving).path(), 'utf8');
}

/** Chooses a file with that text, and waits until it has been read: then the field is empty again. */
async function choose(page: Page, text: string) {
	const field = page.getByLabel('Restore from a backup file');
	await field.setInputFiles({
		name: 'backup.json',
		mimeType: 'application/json',
		buffer: Buffer.from(text)
	});
	await expect.poll(() => field.inputValue()).toBe('');
}

/** How many events the log of the device has. */
function events(page: Page): Promise<number> {
	return page.evaluate(async () => {
		const wait = <T>(request: IDBRequest<T>) =>
			new Promise<T>((resolve) => (request.onsuccess = () => resolve(request.result)));
		const db = await wait(indexedDB.open('bucktail'));
		const count = await wait(db.transaction('events').objectStore('events').count());
		db.close();
		return count;
	});
}

/** What the plan says of today. */
async function today(page: Page): Promise<string> {
	await page.goto('/plan/');
	await page.getByRole('button', { name: 'Start today’s tasks' }).waitFor();
	return page.getByText(/^Today: /).innerText();
}

test('a backup restored on another device goes on where the first was', async ({ openPage }) => {
	const page = await openPage();
	await add(page, 'Sam');
	await answer(page, 'RL1-00C8-8D', true);
	await answer(page, 'RL2-00G0-8B', false);
	await answer(page, 'BS1-00S1-54', false);
	const here = await today(page);
	const before = await dump(page);
	const text = await saved(page, 'Save a backup');

	const there = await openPage();
	await there.goto('/learners/');
	await choose(there, text);
	await there.getByText('Sam: 4 records').waitFor();
	expect((await dump(there)).stores).toEqual({ events: [], folds: [], learners: [] });
	await there.getByRole('button', { name: 'Add to this device' }).click();
	await there.getByText('4 records were new. 1 learner was added.').waitFor();
	expect(await today(there)).toBe(here);
	const after = await dump(there);
	expect(after.stores.events).toEqual(before.stores.events);
	// Memories, slips and the course are worked out anew from the log, and come to the same.
	expect(after.stores.folds).toEqual(before.stores.folds);
	expect(JSON.stringify(after.stores.folds)).toContain('memories');

	await there.goto('/learners/');
	await choose(there, text);
	await there.getByRole('button', { name: 'Add to this device' }).click();
	await there.getByText('Nothing was new: 4 records were here already.').waitFor();
	expect((await dump(there)).stores.events).toEqual(before.stores.events);
});

test('one file holds all learners of a device', async ({ openPage }) => {
	const page = await openPage();
	for (const nickname of ['Sam', 'Kit', 'Lou']) await add(page, nickname);
	const text = await saved(page, 'Save one of all 3 learners');
	const there = await openPage();
	await add(there, 'Kit');
	await choose(there, text);
	for (const nickname of ['Sam', 'Kit', 'Lou']) {
		await there.getByText(`${nickname}: 1 record`).waitFor();
	}
	await there.getByRole('button', { name: 'Add to this device' }).click();
	await there.getByText('3 records were new. 3 learners were added.').waitFor();
	// Another learner has that name here.
	await there.getByRole('button', { name: 'Work as Kit 2' }).waitFor();
});

test('a long log is added with its progress shown, is stopped, fails half way, and goes on', async ({
	openPage
}) => {
	const page = await openPage();
	await answer(page, 'RL1-00C8-8D', true);
	const file = JSON.parse(await saved(page, 'Save a backup')) as {
		learners: { events: { type: string; id: string; at: number }[] }[];
	};
	const [log] = file.learners;
	const one = log?.events.find(({ type }) => type === 'attempt');
	if (!log || !one) throw new Error('no attempt in the backup');
	const all = 4200;
	for (let i = log.events.length; i < all; i++) {
		log.events.push({ ...one, id: randomUUID(), at: one.at + i });
	}
	const text = JSON.stringify(file);

	const there = await openPage();
	await there.goto('/learners/');
	await choose(there, text);
	const add = there.getByRole('button', { name: 'Add to this device' });
	// As soon as the first portion is in: on a quick machine the rest does not take long.
	await there.evaluate(() => {
		const watch = new MutationObserver(() => {
			const bar = document.querySelector('progress');
			if (!bar || bar.value === 0) return;
			watch.disconnect();
			const field = document.querySelector<HTMLInputElement>('#file');
			Object.assign(window, { seen: [bar.value, bar.max, field?.disabled] });
			[...document.querySelectorAll('button')]
				.find(({ textContent }) => textContent.trim() === 'Stop adding')
				?.click();
		});
		watch.observe(document.body, { childList: true, subtree: true, attributes: true });
	});
	await add.click();
	await there.getByText('Stopped: what was added stays').waitFor();
	expect(await there.evaluate('seen')).toEqual([1000, all, true]);
	const stopped = await events(there);
	expect(stopped).toBeGreaterThanOrEqual(1000);
	expect(stopped).toBeLessThan(all);

	// The disk is full after some more.
	await there.evaluate((room) => {
		const plain = IDBObjectStore.prototype.add;
		let left = room;
		IDBObjectStore.prototype.add = function (...what) {
			if (this.name !== 'events' || left-- > 0) return Reflect.apply(plain, this, what);
			throw new DOMException('full', 'QuotaExceededError');
		};
		Object.assign(window, { mend: () => (IDBObjectStore.prototype.add = plain) });
	}, stopped + 1500);
	await choose(there, text);
	await add.click();
	await there.getByText('Not all of it was added: add it again').waitFor();
	const half = await events(there);
	expect(half).toBeGreaterThan(stopped);
	expect(half).toBeLessThan(all);

	await there.evaluate('mend()');
	await add.click();
	await there.getByText(/records were new/).waitFor();
	expect(await events(there)).toBe(all);
});

describe('a file that cannot be used', () => {
	const sentences: [what: string, sentence: string, spoil: (text: string) => string][] = [
		['cut off', 'That file is damaged', (text) => text.slice(0, -40)],
		['no JSON', 'That file is damaged', () => '\u0000\u0001'],
		['empty', 'That file is damaged', () => ''],
		['of another program', 'not a Bucktail backup', () => '{"version":1,"learners":[]}'],
		['newer', 'Update Bucktail first', (text) => text.replace('"version": 1', '"version": 2')],
		[
			'with a broken event',
			'damaged at event 2 of Sam',
			(text) => text.replace('"byStep"', '"by"')
		],
		[
			'with an event of somebody else',
			'damaged at event 1 of Sam',
			// An id is chance: it may begin with either of the two.
			(text) =>
				text.replace(/"learner":"(\w)/, (_, first) => `"learner":"${first === 'f' ? 0 : 'f'}`)
		]
	];

	test('is refused with its sentence, and everything stays as it was', async ({ openPage }) => {
		const page = await openPage();
		await add(page, 'Sam');
		await answer(page, 'RL1-00C8-8D', false);
		const text = await saved(page, 'Save a backup');
		await page.getByText('The backup is in your downloads').waitFor();
		const before = await dump(page);
		for (const [what, sentence, spoil] of sentences) {
			expect(spoil(text), what).not.toBe(text);
			await choose(page, spoil(text));
			await page.getByRole('alert').filter({ hasText: sentence }).waitFor();
			expect(await page.getByText('In this file').count(), what).toBe(0);
			expect(await dump(page), what).toEqual(before);
		}
		await choose(page, text);
		await page.getByText('In this file').waitFor();
		expect(await page.getByRole('alert').filter({ hasText: /./ }).count()).toBe(0);
		await page.getByRole('button', { name: 'Leave it' }).click();
		expect(await dump(page)).toEqual(before);
	});
});

/** The first page, once all of it has been loaded. */
async function firstPage(page: Page) {
	await page.goto('/');
	await page.getByRole('button', { name: 'Start today’s tasks' }).waitFor();
	await untilQuiet(page);
}

test('after some days the first page reminds of a backup, until there is one', async ({
	openPage
}) => {
	const page = await openPage({ time: '2026-03-09T10:00:00' });
	await add(page, 'Sam');
	await answer(page, 'RL1-00C8-8D', false);
	await firstPage(page);
	expect(await page.getByText('only on this device').count()).toBe(0);

	await page.clock.setSystemTime(new Date('2026-03-15T11:00:00'));
	await firstPage(page);
	await page.getByText('Your work of the last 6 days is only on this device.').waitFor();
	await page.getByRole('link', { name: 'Save a backup' }).click();
	const saving = page.waitForEvent('download');
	await page.getByRole('button', { name: 'Save a backup' }).click();
	expect((await saving).suggestedFilename()).toBe('bucktail-sam-2026-03-15.json');
	await page.getByText('Last backup: 15 March 2026.').waitFor();
	await firstPage(page);
	expect(await page.getByText('only on this device').count()).toBe(0);
});

describe('whether the browser keeps what is stored', () => {
	/** A page on a browser that counts how often it is asked, and agrees from then on. */
	async function asked(page: Page) {
		let times = 0;
		await page.exposeFunction('asked', () => times++);
		await page.addInitScript(() => {
			const tell: unknown = Reflect.get(globalThis, 'asked');
			navigator.storage.persisted = async () => sessionStorage.getItem('kept') !== null;
			navigator.storage.persist = async () => {
				sessionStorage.setItem('kept', '');
				if (typeof tell === 'function') await tell();
				return true;
			};
		});
		return () => times;
	}

	test('is asked with the first backup, and told in words', async ({ openPage }) => {
		const page = await openPage({ own: true });
		const times = await asked(page);
		await answer(page, 'RL1-00C8-8D', false);
		await page.goto('/learners/');
		await page.getByText('This browser may clear your work').waitFor();
		expect(times()).toBe(0);
		await page.getByRole('button', { name: 'Save a backup' }).click();
		await page.getByText('This browser keeps your work until you remove it yourself.').waitFor();
		expect(times()).toBe(1);
	});

	test('is asked with the first learner that is added', async ({ openPage }) => {
		const page = await openPage({ own: true });
		const times = await asked(page);
		await page.goto('/learners/');
		await page.getByText('This browser may clear your work').waitFor();
		expect(times()).toBe(0);
		await add(page, 'Sam');
		await page.getByText('This browser keeps your work').waitFor();
		await add(page, 'Kit');
		expect(times()).toBe(1);
	});

	test('is asked after ten tasks, once', async ({ openPage }) => {
		const page = await openPage({ own: true });
		const times = await asked(page);
		await page.goto('/choose/');
		await page.getByRole('button', { name: 'Start ten tasks' }).click();
		for (let n = 1; n <= 11; n++) {
			const task = await openWhole(page);
			await answerByKeyboard(page, wrongAnswers(task));
			await page.getByText('Saved on this device.').waitFor();
			await expect.poll(times, { message: `after ${n}` }).toBe(n < 10 ? 0 : 1);
			await page.locator('[data-next]').click();
			await page.waitForURL((url) => url.searchParams.get('task') !== task.number);
		}
	});
});

test('a chosen file and a refused one break no rule that a program can check', async ({
	openPage
}) => {
	const page = await openPage();
	await add(page, 'Sam');
	await choose(page, await saved(page, 'Save a backup'));
	await page.getByText('In this file').waitFor();
	await isSound(page, 'chosen');
	await choose(page, '{}');
	await page.getByRole('alert').filter({ hasText: 'not a Bucktail backup' }).waitFor();
	await isSound(page, 'refused');
});
