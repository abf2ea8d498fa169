import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import type { Below } from '../../src/lib/app/practice/run.ts';
import { belowFrom } from '../app/seeded-chance.ts';
import { type Killable, startKillable } from './killable.ts';

/*
 * Kills the browser's processes at random moments while somebody practises, and opens the same
 * profile again: the store must open, and hold every attempt that the page had called saved.
 *
 * This is no test of power loss. What a killed process had handed to the operating system still
 * reaches the disk; with the power gone it may not. Attempts are written with strict durability,
 * which asks for the disk itself, but only pulling the plug could show that it obeys.
 *
 * KILLS=1000 kills more often, SEED=… at other moments.
 */

const kills = Number(process.env.KILLS ?? 200);
const seed = Number(process.env.SEED ?? 1);
/** Browsers at once; each has a profile of its own. */
const lanes = 2;

/** What was typed: no two attempts have the same. */
type Typed = string;

interface Tally {
	kills: number;
	/** Attempts that the page called saved. */
	saved: number;
	/** Those of them that the store does not hold. */
	lost: Typed[];
	/** Openings of the profile after which the page could not use its store. */
	failedOpens: string[];
	/** Openings that found a fold behind its log. */
	staleFolds: number;
}

test.skipIf(process.platform === 'win32')(
	'a killed browser loses no attempt that was called saved, and its store opens',
	{ timeout: kills * 10_000 },
	async () => {
		const share = (lane: number) => Math.ceil((kills - lane) / lanes);
		const tallies = await Promise.all(
			Array.from({ length: lanes }, (_, lane) => practiseAndKill(share(lane), seed + lane))
		);
		const sum = (count: (tally: Tally) => number) => tallies.reduce((n, one) => n + count(one), 0);
		const lost = tallies.flatMap((tally) => tally.lost);
		const failedOpens = tallies.flatMap((tally) => tally.failedOpens);
		console.log(
			`${sum((tally) => tally.kills)} kills (seed ${seed}): ` +
				`${sum((tally) => tally.saved)} attempts were called saved, ${lost.length} lost; ` +
				`${failedOpens.length} failed opens.`
		);
		expect(lost).toEqual([]);
		expect(failedOpens).toEqual([]);
		expect(sum((tally) => tally.staleFolds)).toBe(0);
		expect(sum((tally) => tally.saved)).toBeGreaterThan(kills);
	}
);

async function practiseAndKill(times: number, laneSeed: number): Promise<Tally> {
	const tally: Tally = { kills: 0, saved: 0, lost: [], failedOpens: [], staleFolds: 0 };
	const below = belowFrom(laneSeed * 7919);
	const profile = mkdtempSync(join(tmpdir(), 'bucktail-kill-'));
	const shown = new Set<Typed>();
	try {
		while (tally.kills < times) {
			// One life in four ends while the page still starts, before anything is looked at.
			const duringStart = below(4) === 0;
			const browser = await startKillable(profile);
			try {
				const page = await openedPage(browser, shown);
				if (!duringStart) await look(page, shown, tally);
				const atWork = practise(page, below);
				if (!duringStart) {
					await Promise.race([atWork, moreSaved(shown, 1 + below(5), tally)]);
				}
				// Every other one the very moment that an answer is called saved.
				const wait = duringStart ? below(700) : below(2) * below(150);
				await Promise.race([atWork, sleep(wait)]);
			} finally {
				await browser.kill();
				tally.kills++;
			}
		}
		const browser = await startKillable(profile);
		await look(await openedPage(browser, shown), shown, tally).finally(browser.kill);
		return { ...tally, saved: shown.size };
	} finally {
		rmSync(profile, { recursive: true, force: true });
	}
}

const savedWords = 'Saved on this device.';
const startAddress = '/practice/?task=BS1-00S1-54';

/** A page that tells, the moment it does so, which attempt it calls saved. */
async function openedPage({ context }: Killable, shown: Set<Typed>): Promise<Page> {
	await context.exposeFunction('called', (typed: Typed) => void shown.add(typed));
	await context.addInitScript((words) => {
		let checked = '';
		let wasShown = false;
		const onSubmit = () => {
			checked = document.querySelector<HTMLInputElement>('[data-answer]')?.value ?? '';
		};
		document.addEventListener('submit', onSubmit, { capture: true });
		new MutationObserver(() => {
			const notes = [...document.querySelectorAll('[role="status"] > p')];
			const isShown = notes.some((note) => note.textContent === words);
			if (isShown && !wasShown) {
				void (window as unknown as { called: (typed: string) => void }).called(checked);
			}
			wasShown = isShown;
		}).observe(document, { childList: true, subtree: true, characterData: true });
	}, savedWords);
	const page = context.pages()[0] ?? (await context.newPage());
	// Without waiting for the load: a life may end during it.
	await page.goto(`${inject('site')}${startAddress}`, { waitUntil: 'commit' });
	return page;
}

/** Looks whether the page could open its store, and what is in it. */
async function look(page: Page, shown: ReadonlySet<Typed>, tally: Tally): Promise<void> {
	const wanted = [...shown];
	// Before anything was saved there is no store to look into, and looking would make one.
	if (wanted.length === 0) return;
	try {
		await page.locator('[data-answer]').waitFor();
		// The page itself names the learner once it has read its store.
		await page.locator('.who', { hasText: 'Learner 1' }).waitFor();
		const { typed, isCurrent } = await page.evaluate(inStore);
		const held = new Set(typed);
		const gone = wanted.filter((one) => !held.has(one) && !tally.lost.includes(one));
		tally.lost.push(...gone);
		if (!isCurrent) tally.staleFolds++;
	} catch (error) {
		tally.failedOpens.push(`after kill ${tally.kills}: ${String(error)}`);
	}
}

/** Waits until so many more attempts were called saved. */
async function moreSaved(shown: ReadonlySet<Typed>, more: number, tally: Tally): Promise<void> {
	const [wanted, late] = [shown.size + more, Date.now() + 30_000];
	while (shown.size < wanted && Date.now() < late) await sleep(3);
	if (shown.size < wanted) tally.failedOpens.push(`after kill ${tally.kills}: nothing is saved`);
}

/** Runs in the page: the attempts in the store, and whether the folds hold all of them. */
async function inStore(): Promise<{ typed: string[]; isCurrent: boolean }> {
	const done = <T>(request: IDBRequest<T>) =>
		new Promise<T>((resolve, reject) => {
			request.onsuccess = () => resolve(request.result);
			request.onerror = () => reject(new Error(request.error?.message));
		});
	const db = await done(indexedDB.open('bucktail'));
	const tx = db.transaction(['events', 'folds']);
	const [events, folds] = await Promise.all([
		done(tx.objectStore('events').getAll()),
		done(tx.objectStore('folds').getAll())
	]);
	db.close();
	const attempts = events.filter(({ type }) => type === 'attempt');
	const newest = events.at(-1)?.id;
	return {
		typed: attempts.flatMap((attempt) => Object.values<string>(attempt.typed)),
		isCurrent: folds.every(({ last }) => (last?.id ?? undefined) === newest)
	};
}

let answers = 0;

/** Answers wrong without end, each time with another number, until the browser is gone. */
async function practise(page: Page, below: Below): Promise<never> {
	const field = page.locator('[data-answer]');
	const check = async () => {
		await field.fill(`${(9 + ++answers / 10_000).toFixed(4)} in`);
		await field.press('Enter');
	};
	try {
		for (;;) {
			await check();
			// Sometimes a second answer comes before the first one is safe.
			if (below(3) === 0) await check();
			await page.getByText(savedWords).waitFor();
			if (below(4) === 0) await page.getByRole('button', { name: 'Same kind' }).click();
			else if (below(8) === 0) await page.reload({ waitUntil: 'commit' });
		}
	} catch {
		// The browser was killed; whether all is well, the next look says.
		return new Promise(() => {});
	}
}
