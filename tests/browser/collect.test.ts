import { mkdtempSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { composeSet, plainTerms, readWish } from '../../src/lib/engine/sets/compose.ts';
import { type OpenSet, openSet, type SetTask } from '../../src/lib/engine/sets/open-set.ts';
import { evaluate } from '../../src/lib/engine/solver/evaluate.ts';
import { textAt } from '../../src/lib/engine/solver/show.ts';
import { writeHandInFile, writeHandInText } from '../../src/lib/exchange/hand-in-file.ts';
import { handInOf, rightEntries } from '../engine/sets/hand-ins.ts';
import { looks, overTheEdge, violations } from './axe.ts';
import { test } from './site-test.ts';

const wishes = 'RL1 RD2 LR2 ED2 BS1'.split(' ').map(readWish);
const set = await composeSet({ ...plainTerms('Section B, week 3'), due: '2026-12-04' }, wishes);
const open = await openSet(set);
const row = 3;

/** Right answers, with the end margins left in the run of the row. */
function noMargin(own: SetTask): Record<string, string> {
	if (own.place !== row) return rightEntries(own);
	const { method, drawn } = own.task;
	const step = method.slips.noMargin?.step ?? '';
	const values = evaluate(method, drawn.given, { slips: { [step]: 'noMargin' } });
	return Object.fromEntries(
		drawn.asked.map((key) => [key, textAt(method, key, values[key] ?? '')])
	);
}

const codes = Array.from({ length: 30 }, (_, i) => `B${String(i + 1).padStart(2, '0')}`);
const [inFiles, onPaper] = [codes.slice(0, 24), codes.slice(24)];
const slipped = new Set([...inFiles.slice(0, 9), ...onPaper.slice(0, 2)]);
const entriesOf = (code: string) => (slipped.has(code) ? noMargin : rightEntries);

interface Dropped {
	readonly name: string;
	readonly text: string;
}

/** Drops files on the page, as from a folder window. */
async function drop(page: Page, files: readonly Dropped[]) {
	await page.evaluate((all) => {
		const data = new DataTransfer();
		for (const { name, text } of all) data.items.add(new File([text], name));
		window.dispatchEvent(new DragEvent('drop', { dataTransfer: data, cancelable: true }));
	}, files);
}

async function filesOf(from: OpenSet, which: readonly string[]): Promise<Dropped[]> {
	const handIns = await Promise.all(which.map((code) => handInOf(from, code, entriesOf(code))));
	return handIns.map((one) => ({ name: `${one.code}.json`, text: writeHandInFile(one) }));
}

/** Types sheets of paper in, from Enter to Enter, without a mouse and without ever waiting. */
async function typeIn(page: Page, sheets: readonly string[]) {
	for (const code of sheets) {
		await page.keyboard.type(code);
		await page.keyboard.press('Enter');
		for (const own of open.tasks) {
			const entries = entriesOf(code)(own);
			for (const key of own.task.drawn.asked) {
				await page.keyboard.type(entries[key] ?? '');
				await page.keyboard.press('Enter');
			}
		}
	}
}

/** Makes the worker so slow that all it does takes seconds. */
async function slowDown(page: Page) {
	await page.evaluate((late) => {
		const { postMessage } = Worker.prototype;
		Worker.prototype.postMessage = function (...message: unknown[]) {
			setTimeout(() => Reflect.apply(postMessage, this, message), late);
		};
	}, 2_000);
}

async function saved(page: Page, press: () => Promise<void>): Promise<string> {
	const saving = page.waitForEvent('download');
	await press();
	return readFileSync(await (await saving).path(), 'utf8');
}

describe('an instructor', () => {
	test('collects files and paper, reports, hands back and follows up', async ({ openPage }) => {
		const page = await openPage();
		await page.goto('/sets/collect/');
		await page.locator('html:not([data-asleep])').waitFor();
		const files = await filesOf(open, inFiles);
		const edited = { name: 'edited.json', text: (files[3]?.text ?? '').replace('"B04"', '"B99"') };
		const copy = { name: 'copy.json', text: files[4]?.text ?? '' };
		await drop(page, [...files, edited, copy, { name: 'photo.jpg', text: 'no hand-in' }]);
		await page.getByRole('heading', { name: '24 hand-ins' }).waitFor();
		const aside = page.locator('section', { hasText: 'Set aside: 3,' });
		await aside.waitFor();
		expect(await aside.innerText()).toMatch(/edited\.json\s+Changed after it was handed in/);
		expect(await page.locator('.says').innerText()).toBe(
			'24 hand-ins were taken in. edited.json and photo.jpg are set aside, not marked; the list below says why.'
		);
		// What waits for the instructor stands before the marks, and what is settled is folded.
		const top = async (name: string) => (await page.locator(name).first().boundingBox())?.y ?? 0;
		expect(await top('section:has-text("Set aside")')).toBeLessThan(await top('table'));
		expect(await aside.innerText()).not.toContain('copy.json');
		await aside.getByText('1 file with nothing to do').click();
		expect(await aside.innerText()).toMatch(/copy\.json\s+The same hand-in of B05/);

		await page.getByRole('button', { name: 'Type in a paper one' }).press('Enter');
		await typeIn(page, onPaper);
		await page.getByText('B30 is typed in.').waitFor();
		await page.keyboard.press('Escape');
		await page.reload();
		await page.getByRole('heading', { name: '30 hand-ins' }).waitFor();

		// What could not be read stays through a reload, with its reason, until it is seen to.
		expect(await aside.innerText()).toMatch(/edited\.json\s+Changed after it was handed in/);
		await page.getByRole('button', { name: 'Take off the list: photo.jpg' }).click();
		await page.locator('section', { hasText: 'Set aside: 2,' }).waitFor();
		await page.reload();
		await page.locator('section', { hasText: 'Set aside: 2,' }).waitFor();
		expect(await page.getByText('photo.jpg').count()).toBe(0);

		// By the arrow keys to B02, task 3; M to the mark, and another one with a note.
		await page.locator('[data-cell="0-0"]').focus();
		for (const key of ['ArrowDown', 'ArrowRight', 'ArrowRight']) await page.keyboard.press(key);
		const cell = page.locator('[data-cell="1-2"]');
		expect(await cell.getAttribute('aria-label')).toBe('B02, task 3: 3 of 4, step 1 lost');
		await page.getByRole('heading', { name: 'B02, task 3' }).waitFor();
		await page.keyboard.press('m');
		await page.locator('#mark:focus').selectOption('4');
		await page.getByLabel('Note, if you change it').fill('Shown at the bench');
		await page.keyboard.press('Enter');
		await page.getByText('Changed by hand from 3: Shown at the bench').waitFor();

		const csv = await saved(page, () =>
			page.getByRole('button', { name: 'Gradebook CSV' }).click()
		);
		expect(csv).toContain(`B02,,4,3,4,`);
		expect(csv).toContain('Task 3: Shown at the bench');
		expect(csv.trim().split('\r\n')).toHaveLength(31);

		for (const { viewport, colorScheme } of looks) {
			await page.setViewportSize(viewport);
			await page.emulateMedia({ colorScheme });
			expect(await violations(page)).toEqual([]);
			expect(await overTheEdge(page)).toBeLessThanOrEqual(0);
		}
		await page.setViewportSize(looks[0].viewport);

		await page.getByRole('link', { name: 'Report' }).click();
		const headline = page.getByRole('heading', {
			name: /^11 of 30 The end margins were not taken off/
		});
		await headline.waitFor();
		expect(await violations(page)).toEqual([]);
		const followUp = page.getByRole('link', { name: 'Make the follow-up set' });
		const to = new URL((await followUp.getAttribute('href')) ?? '', page.url());
		expect(to.pathname).toBe('/sets/new/');
		expect(to.searchParams.get('missed')).toMatch(/^[\w-]+\/run/);

		await page.getByRole('link', { name: 'A page per student' }).click();
		await page.getByLabel('Show').selectOption('B25');
		const sheet = page.getByRole('article');
		await expect.poll(() => sheet.count()).toBe(1);
		expect(await sheet.textContent()).toContain('The end margins were not taken off');
		expect(await violations(page)).toEqual([]);
	});

	test('types six sheets in without waiting, though marking stands still, and leaves', async ({
		openPage
	}) => {
		const page = await openPage();
		await page.goto('/sets/collect/');
		await page.locator('html:not([data-asleep])').waitFor();
		await drop(page, await filesOf(open, ['B01']));
		await page.getByRole('heading', { name: '1 hand-in' }).waitFor();
		await page.getByRole('button', { name: 'Type in a paper one' }).press('Enter');
		await slowDown(page);
		await typeIn(page, onPaper);
		await page.getByText('Typed in: B30, B29, B28, B27, B26, B25.').waitFor();
		await page.reload();
		await page.getByRole('heading', { name: '7 hand-ins' }).waitFor();
		for (const [i, code] of onPaper.entries()) {
			const label = await page.locator(`[data-cell="${i + 1}-2"]`).getAttribute('aria-label');
			expect(label).toContain(`${code}, task 3: ${slipped.has(code) ? 3 : 4} of 4`);
		}
		// A mistake in typing is put right without typing all of it again.
		await page.getByRole('button', { name: 'Type in a paper one' }).press('Enter');
		await page.keyboard.type('B25');
		await page.keyboard.press('Enter');
		await page.getByText('B25 was typed in before').waitFor();
		const entries = Object.values(open.tasks.map(entriesOf('B25'))[0] ?? {});
		expect(await page.locator('form li input').first().inputValue()).toBe(entries[0]);
	});

	test('calls off 500 files, chooses between two, and reads no bomb', async ({ openPage }) => {
		const page = await openPage();
		await page.goto('/sets/collect/');
		await page.locator('html:not([data-asleep])').waitFor();
		const [first] = await filesOf(open, ['B01']);
		const many = Array.from({ length: 500 }, (_, i) => ({ ...first, name: `${i}.json` }));
		// As soon as it is there: on a quick machine it does not stay for long.
		await page.evaluate(() => {
			const watch = new MutationObserver(() => {
				const all = [...document.querySelectorAll('button')];
				const stop = all.find(({ textContent }) => textContent.trim() === 'Call it off');
				if (!stop) return;
				watch.disconnect();
				stop.click();
			});
			watch.observe(document.body, { childList: true, subtree: true });
		});
		await drop(page, many as Dropped[]);
		await page.getByText('Called off.').waitFor();
		const one = { ...(await handInOf(open, 'B01')), device: '0123456789' };
		const other = { ...(await handInOf(open, 'B01', noMargin)), device: 'ABCDEFGHJK' };
		await drop(page, [
			{ name: 'one.json', text: writeHandInFile(one) },
			{ name: 'other.json', text: writeHandInFile(other) }
		]);
		await page.getByText('stands on hand-ins from 2 devices').first().waitFor();
		await page.getByRole('button', { name: 'Mark this one: other.json' }).click();
		await page.getByRole('heading', { name: '1 hand-in' }).waitFor();
		await page.getByText('You had the other hand-in of B01 marked.').waitFor();
		await page.reload();
		await page.getByRole('heading', { name: '1 hand-in' }).waitFor();
		const bomb = zipSync({ 'a.json': new Uint8Array(60_000_000) });
		await page.getByLabel('Choose files').setInputFiles({
			name: 'bomb.zip',
			mimeType: 'application/zip',
			buffer: Buffer.from(bomb)
		});
		await page.locator('.says', { hasText: /is too large for ha/ }).waitFor();
	});

	test('tries a file again that could not be opened, beside those that could', async ({
		openPage
	}) => {
		const page = await openPage();
		await page.goto('/sets/collect/');
		await page.locator('html:not([data-asleep])').waitFor();
		const [first, second] = await filesOf(open, ['B01', 'B02']);
		const folder = mkdtempSync(join(tmpdir(), 'hand-ins-'));
		const file = join(folder, 'B02.json');
		// A browser reads a file again only as it was when it was chosen.
		const write = () => {
			writeFileSync(file, second?.text ?? '');
			utimesSync(file, 1_700_000_000, 1_700_000_000);
		};
		write();
		// On a stick that is pulled out: the page has the file, and its content is gone.
		await page.evaluate(() => {
			const input = Object.assign(document.createElement('input'), { type: 'file', id: 'stick' });
			document.body.append(input);
		});
		await page.locator('#stick').setInputFiles(file);
		rmSync(file);
		await page.evaluate(
			({ name, text }) => {
				const data = new DataTransfer();
				data.items.add(new File([text], name));
				const [kept] = document.querySelector<HTMLInputElement>('#stick')?.files ?? [];
				if (kept) data.items.add(kept);
				window.dispatchEvent(new DragEvent('drop', { dataTransfer: data, cancelable: true }));
			},
			first ?? { name: '', text: '' }
		);
		await page.getByRole('heading', { name: '1 hand-in' }).waitFor();
		await page.locator('li', { hasText: 'The file cannot be opened;' }).waitFor();
		const again = page.getByRole('button', { name: 'Try again: B02.json' });
		await again.press('Enter');
		await page.locator('li', { hasText: 'The file cannot be opened;' }).waitFor();

		write();
		await again.press('Enter');
		await page.getByRole('heading', { name: '2 hand-ins' }).waitFor();
		expect(await page.getByText('The file cannot be opened;').count()).toBe(0);
		rmSync(folder, { recursive: true });
	});

	test('keeps a hand-in of another set until it is collected there', async ({ openPage }) => {
		const page = await openPage();
		await page.goto('/sets/collect/');
		await page.locator('html:not([data-asleep])').waitFor();
		await drop(page, await filesOf(open, ['B01']));
		await page.getByRole('heading', { name: '1 hand-in' }).waitFor();
		const other = await openSet(await composeSet(plainTerms('Week 4'), [readWish('RL1')]));
		const stray = writeHandInFile(await handInOf(other, 'C01'));
		await drop(page, [{ name: 'stray.json', text: stray }]);
		await page.getByText(`stray.json is set aside, not marked: belongs to another set`).waitFor();
		await page.reload();
		await page.getByRole('heading', { name: '1 hand-in' }).waitFor();
		const away = page.getByRole('button', { name: 'Collect it there: stray.json' });
		await away.click();
		await page.getByRole('heading', { name: 'Week 4: 1 hand-in' }).waitFor();
		await page.goto(`/sets/collect/?set=${open.hash}`);
		await page.getByRole('heading', { name: 'Section B, week 3: 1 hand-in' }).waitFor();
		expect(await away.count()).toBe(0);
	});

	test('takes pasted texts, and prints one sheet a code', async ({ openPage }) => {
		const page = await openPage();
		await page.goto('/sets/collect/');
		const text = await writeHandInText(await handInOf(open, 'B07'));
		await page.getByRole('button', { name: 'Paste a text' }).click();
		await page.getByLabel('Hand-in texts, or the link of a set').fill(`Dear all\n${text ?? ''}`);
		await page.getByRole('button', { name: 'Take it in' }).click();
		await page.getByRole('heading', { name: '1 hand-in', exact: false }).waitFor();

		for (const [words, says] of [
			[text ?? '', 'Nothing new. 1 had been taken in before.'],
			['Dear all', 'neither a hand-in nor the link of a set'],
			['https://school.example.edu/sets/#2.z.eJ.XX', 'damaged or cut short']
		] as const) {
			await page.getByRole('button', { name: 'Paste a text' }).click();
			await page.getByLabel('Hand-in texts, or the link of a set').fill(words);
			await page.getByRole('button', { name: 'Take it in' }).click();
			await page.getByText(says).waitFor();
		}
		expect(await page.getByText('Nothing new').count()).toBe(0);

		await page.getByRole('link', { name: 'Print' }).click();
		await page.getByLabel('one per student code').check();
		await page.getByLabel('Student codes').fill('code;name\nB01;"=1+1"\nB02;Sam');
		await page.getByRole('button', { name: 'Use these codes' }).click();
		const sheets = page.locator('.pg');
		await expect.poll(() => sheets.first().innerText()).toContain('=1+1');
		expect(await sheets.last().textContent()).toContain('B02');
	});
});
