import type { BrowserContextOptions, Page } from 'playwright-core';
import { kindAt } from '../../src/lib/engine/solver/kind-at.ts';
import { textAt } from '../../src/lib/engine/solver/show.ts';
import type { Task } from '../../src/lib/engine/tasks/task.ts';

/** A way to look at a sheet. The keyboard of a phone of 360 by 640 leaves 380 of its height. */
interface Look {
	readonly id: 'laptop' | 'phone' | 'keyboard';
	readonly name: string;
	readonly visitor: BrowserContextOptions;
}

export const looks: readonly Look[] = [
	{
		id: 'laptop',
		name: 'after Check, 1280 by 800',
		visitor: { viewport: { width: 1280, height: 800 } }
	},
	{
		id: 'keyboard',
		name: 'after Check, 360 by 380 over a keyboard',
		visitor: { viewport: { width: 360, height: 380 }, hasTouch: true }
	},
	{
		id: 'phone',
		name: 'Check before scrolling, 360 by 740',
		visitor: { viewport: { width: 360, height: 740 }, hasTouch: true }
	}
];

/** What must be seen after Check: stamp, sentence, and the metal with what is said of it. */
const parts = ['.stamp', '.say .lines', '.metal svg', '.metal figcaption'];

interface Seen {
	/** Whether Check was in view before anything was scrolled. */
	readonly before: boolean;
	/** What was not wholly in view after it. */
	readonly after: readonly string[];
}

/** Opens a task, answers it wrong as somebody would, and looks at what is in view. */
export async function measured(page: Page, task: Task): Promise<Seen> {
	await page.goto(`/practice/?task=${task.number}`);
	await page.locator('[data-answer], [data-answer-choice]').first().waitFor();
	const before = (await outOfView(page, ['.go button:last-of-type'])).length === 0;
	await answer(page, wrongIn(task));
	await page.locator('.stamp').waitFor();
	await page.locator('.say .lines').waitFor();
	await page.evaluate(
		() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 60)))
	);
	return { before, after: await outOfView(page, parts) };
}

async function answer(page: Page, typed: Readonly<Record<string, string>>): Promise<void> {
	for (const [key, text] of Object.entries(typed)) {
		const field = page.locator(`[data-answer="${key}"]`);
		if ((await field.count()) > 0) {
			await field.focus();
			await page.keyboard.press('ControlOrMeta+a');
			await page.keyboard.type(text);
		} else {
			await page.locator(`[data-answer-choice="${key}"] input[value="${text}"]`).focus();
			await page.keyboard.press('Space');
		}
	}
	await page.keyboard.press('Enter');
}

/** The values of the first slip that shows in the last answer, as they would be typed. */
function wrongIn({ method, drawn, right, slips }: Task): Record<string, string> {
	const write = (key: string, value = right[key]) =>
		textAt(method, key, value ?? '')
			.replaceAll(', ', '; ')
			.replace(/ \([^)]*\)$/, '');
	const last = drawn.asked.at(-1) ?? '';
	const values = [...slips.values()].find((one) => write(last, one[last]) !== write(last));
	return Object.fromEntries(
		drawn.asked.map((key) => {
			const [other = '97.7'] = kindAt(method, key).choices.filter((one) => one !== right[key]);
			return [key, values ? write(key, values[key]) : other];
		})
	);
}

/** Those of the selectors whose first element is there and not wholly in view. */
function outOfView(page: Page, selectors: readonly string[]): Promise<string[]> {
	return page.evaluate((all) => {
		const foot = document.querySelector('.keys')?.getBoundingClientRect().top ?? innerHeight;
		return all.filter((selector) => {
			const element = document.querySelector(selector);
			if (!element) return false;
			const { top, bottom, height } = element.getBoundingClientRect();
			// What is read of it; that a finger may press beside a link makes nothing longer.
			const read = document.createRange();
			read.selectNodeContents(element);
			const isCut =
				element instanceof HTMLElement && read.getBoundingClientRect().bottom > bottom + 2;
			return height < 8 || top < -1 || bottom > foot + 1 || isCut;
		});
	}, selectors);
}
