import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { type Question, readQuestion, writeQuestion } from '../../src/lib/app/ask/ask-link.ts';
import { cards } from '../../src/lib/engine/families/topics.ts';
import { taskFromNumber } from '../../src/lib/engine/tasks/task.ts';
import { writeTaskNumber } from '../../src/lib/engine/tasks/task-number.ts';
import { isSound, looks } from './axe.ts';
import { dump } from './dump.ts';
import { answerByKeyboard, openTask, wrongAnswers } from './keyboard.ts';
import { test } from './site-test.ts';

const note = 'Why is the shank 1.5 D? I took 1 D.';

/** Checks two wrong answers with a step opened between them, leaves a third unchecked, and asks. */
async function ask(page: Page) {
	await page.goto('/practice/?task=RL1-00C8-8D');
	await openTask(page);
	const needed = page.locator('[data-answer="needed"]');
	const field = page.locator('[data-answer="length"]');
	await needed.fill('1.7');
	await field.fill('1 7/8');
	await field.press('Enter');
	await page.locator('.stamp').waitFor();
	await page.getByRole('button', { name: 'Step by step' }).click();
	await page.getByRole('button', { name: 'Show this step' }).click();
	await page.getByRole('button', { name: 'Back to the whole task' }).click();
	await needed.fill('.281');
	await field.fill('-5');
	await field.press('Enter');
	await page.getByText('5/16 in (−5)').first().waitFor();
	await field.fill('about half');
	await page.getByText('Saved on this device.').waitFor();
	await page.getByRole('button', { name: 'Ask my instructor' }).click();
	await page.getByLabel('What do you want to ask?').fill(note);
}

/** The link in the field, once it is that of the note, and once the address is that link. */
async function link(page: Page): Promise<string> {
	const field = page.getByLabel('Link to this question');
	await expect
		.poll(async () => (await readQuestion(new URL(await field.inputValue()).hash)).ok)
		.toBe(true);
	await expect
		.poll(async () => {
			const reading = await readQuestion(new URL(page.url()).hash);
			return reading.ok && reading.question.note;
		})
		.toBe(note);
	expect(await field.inputValue()).toBe(page.url());
	return page.url();
}

/** What the sheet of a question says, without what can be done with it. */
async function sheet(page: Page): Promise<string[]> {
	await page.locator('#question').waitFor();
	const texts = await page
		.locator('.question .words, .question .note, .question .found')
		.allInnerTexts();
	// Where words can be pressed, values and their units are kept together as well.
	return texts.map((text) => text.replaceAll('\u00a0', ' '));
}

test('the link opened on another device shows exactly what was asked', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/learners/');
	await page.getByLabel('Nickname', { exact: true }).fill('Quetzal');
	await page.keyboard.press('Enter');
	await page.getByText('Quetzal was added').waitFor();
	await ask(page);
	const address = await link(page);
	const mine = await sheet(page);
	expect(await page.getByText('The full working').count()).toBe(0);

	expect(new URL(address).search).toBe('');
	const reading = await readQuestion(new URL(address).hash);
	expect(JSON.stringify(reading)).not.toContain('Quetzal');

	const there = await openPage();
	await there.goto(address);
	expect(await sheet(there)).toEqual(mine);
	const shown = mine.join('\n');
	for (const part of [
		note,
		'Next stocked length: 1 7/8 read as 1 7/8 in',
		'This number alone does not tell which step went wrong',
		'Check 2, after opening 1 step',
		'Only the 1.5D for the shop head: the grip is left out.',
		'about half could not be read',
		'Steps opened: 1 of 4',
		'0.103 in'
	]) {
		expect(shown).toContain(part);
	}
	// Each is drawn for the place it stands in: what it is lettered with is the same.
	const lettering = (one: Page) =>
		one.locator('.question figure svg').locator('text, title').allTextContents();
	for (const one of [page, there]) {
		await one.locator('.question figure svg text').first().waitFor();
	}
	expect(await lettering(there)).toEqual(await lettering(page));
	expect(await lettering(there)).toContain('D 3/16 in (−6)');

	// To be read only: no field, and nothing is kept on that device.
	expect(await there.locator('main input, main textarea').count()).toBe(0);
	const { stores, local } = await dump(there);
	expect(stores).toEqual({});
	expect(local).toEqual({});

	const working = there.getByText('Next stocked length').last();
	expect(await working.isVisible()).toBe(false);
	await there.getByText('The full working').click();
	expect(await working.isVisible()).toBe(true);
	await there.getByRole('link', { name: 'Open this task' }).click();
	expect((await openTask(there)).number).toBe('RL1-00C8-8D');
});

test('a question is shown in the units it was asked in, until they are switched', async ({
	openPage
}) => {
	const page = await openPage();
	await ask(page);
	const address = await link(page);
	const there = await openPage();
	await there.goto('/rules/');
	await there.getByLabel('mm').check();
	await there.goto(address);
	expect((await sheet(there)).join()).toContain('0.040 in');
	await there.getByLabel('inch').check();
	await there.getByLabel('mm').check();
	await there
		.getByText(/1\.01\d* mm/)
		.first()
		.waitFor();
});

test('going back to the task finds it as it was left', async ({ openPage }) => {
	const page = await openPage();
	await ask(page);
	await page.getByRole('link', { name: 'Back to the task' }).click();
	await openTask(page);
	expect(await page.locator('[data-answer="length"]').inputValue()).toBe('about half');
});

describe('handing on the link', () => {
	test('copies it', async ({ openPage }) => {
		const page = await openPage({ permissions: ['clipboard-read', 'clipboard-write'] });
		await ask(page);
		const address = await link(page);
		await page.getByRole('button', { name: 'Copy link' }).click();
		await page.getByText('Link copied.').waitFor();
		expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(address);
	});

	test('selects it where the browser does not let the page copy', async ({ openPage }) => {
		const page = await openPage({ own: true });
		await page.addInitScript(() => {
			navigator.clipboard.writeText = () => Promise.reject(new DOMException('no'));
		});
		await ask(page);
		const address = await link(page);
		await page.getByRole('button', { name: 'Copy link' }).click();
		await page.getByText('the link is selected').waitFor();
		expect(await page.evaluate(() => getSelection()?.toString())).toBe(address);
	});

	test('hands it to the apps of the device, where there is a way', async ({ openPage }) => {
		const page = await openPage({ own: true });
		await page.addInitScript(() => {
			navigator.share = async (data) => {
				Reflect.set(globalThis, 'handed', data?.url);
			};
		});
		await ask(page);
		const address = await link(page);
		await page.getByRole('button', { name: 'Share …' }).click();
		expect(await page.evaluate(() => Reflect.get(globalThis, 'handed'))).toBe(address);
	});
});

test('a link that is no question gets one sentence, and the page goes on', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/ask/');
	await page.getByRole('heading', { name: 'Ask your instructor' }).waitFor();
	const good = await writeQuestion(question('RL1-00C8-8D'));
	const wrongNumber = await writeQuestion(question('RL1-0004-1C'));
	const hostile = [
		['1.abc.xx', 'damaged or cut short'],
		[good.slice(0, -5), 'damaged or cut short'],
		['<img src=x onerror=alert(1)>', 'damaged or cut short'],
		[`1.0.${'A'.repeat(20_000)}`, 'damaged or cut short'],
		[good.replace('2.', '9.'), 'a newer version made that link'],
		[wrongNumber, 'One character of that task number is off']
	] as const;
	for (const [fragment, sentence] of hostile) {
		await page.evaluate((hash) => (location.hash = hash), fragment);
		await page.getByText(sentence).waitFor();
		expect(await page.locator('main p').count(), sentence).toBe(1);
		await page.evaluate((hash) => (location.hash = hash), good);
		await page.getByText('Nothing was checked.').waitFor();
	}
});

/** The most that a link can hold on a task: one slip of paper must do for it. */
function question(task: string, typed: Readonly<Record<string, string>> = {}): Question {
	const check = { typed, picked: {}, units: 'in' as const, opened: 3, byStep: false };
	const filled = Object.keys(typed).length > 0;
	return {
		task,
		units: 'in',
		opened: filled ? 99 : 0,
		byStep: false,
		worked: false,
		before: 0,
		checks: filled ? Array.from({ length: 8 }, () => check) : [],
		open: typed,
		note: filled ? `${note} `.repeat(9).slice(0, 300) : ''
	};
}

describe('the printed slip', () => {
	const margin = { top: '10mm', right: '10mm', bottom: '10mm', left: '10mm' };

	test('is one page of A4 and of Letter in every family', async ({ openPage }) => {
		const page = await openPage({ colorScheme: 'dark' });
		for (const { code, rev } of cards) {
			const number = writeTaskNumber({ code, level: 3, seed: 4, rev });
			const typed = wrongAnswers(await taskFromNumber(number));
			await page.goto(`/ask/#${await writeQuestion(question(number, typed))}`);
			await page.getByText(number).waitFor();
			for (const format of ['A4', 'Letter']) {
				const pdf = (await page.pdf({ format, margin })).toString('latin1');
				expect(pdf.match(/\/Type\s*\/Page\b/g)?.length, `${code} on ${format}`).toBe(1);
			}
		}
	});

	test('holds the question in black on white, and nothing to press', async ({ openPage }) => {
		const page = await openPage({ colorScheme: 'dark' });
		await ask(page);
		await link(page);
		await page.emulateMedia({ media: 'print' });
		for (const part of [note, 'Check 2', 'RL1-00C8-8D', 'Grip: everything', 'Name']) {
			expect(await page.getByText(part).locator('visible=true').count(), part).toBeGreaterThan(0);
		}
		// Words of the trade can be pressed on a screen; on paper they are words like the rest.
		await page.locator('button.word').first().waitFor();
		const words = await page.locator('button.word').evaluateAll((all) =>
			all.map((one) => {
				const { textDecorationLine, borderTopWidth, backgroundColor, color } =
					getComputedStyle(one);
				const around = one.parentElement && getComputedStyle(one.parentElement).color;
				return [textDecorationLine, borderTopWidth, backgroundColor, color === around];
			})
		);
		expect(words.length).toBeGreaterThan(0);
		for (const word of words) expect(word).toEqual(['none', '0px', 'rgba(0, 0, 0, 0)', true]);
		for (const tag of ['button:not(.word)', 'a', 'input', 'textarea', 'nav']) {
			expect(await page.locator(tag).locator('visible=true').count(), tag).toBe(0);
		}
		const [ink, paper] = await page.evaluate(() => [
			getComputedStyle(document.body).color,
			getComputedStyle(document.body).backgroundColor
		]);
		expect([ink, paper]).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
	});
});

test('no state of the page breaks a rule that a program can check', async ({ openPage }) => {
	const page = await openPage();
	await page.goto('/ask/');
	await page.getByRole('heading', { name: 'Ask your instructor' }).waitFor();
	await isSound(page, 'nothing asked');
	await ask(page);
	await link(page);
	await isSound(page, 'asking');
	await page.reload();
	await page.getByText('The full working').click();
	await isSound(page, 'asked');
	const typed = wrongAnswers(await taskFromNumber('BW3-0VAF-49'));
	await page.goto(`/ask/#${await writeQuestion(question('BW3-0VAF-49', typed))}`);
	await page.getByText('BW3-0VAF-49').waitFor();
	await isSound(page, 'much');
	await page.goto('/ask/#1.1.1');
	await page.getByText('damaged or cut short').waitFor();
	await isSound(page, 'refused');
});

test('by keyboard alone a question is asked on a phone', async ({ openPage }) => {
	const page = await openPage(looks[1]);
	await page.goto('/practice/?task=RL1-00C8-8D');
	await answerByKeyboard(page, wrongAnswers(await openTask(page)));
	await page.locator('.stamp').waitFor();
	await page.getByRole('button', { name: 'Ask my instructor' }).press('Enter');
	await page.getByLabel('What do you want to ask?').press('h');
	await page.getByRole('button', { name: 'Copy link' }).press('Enter');
	await page.getByText(/Link copied|the link is selected/).waitFor();
});
