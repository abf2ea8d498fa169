import {
	count,
	diameterDash,
	headNumber,
	lengthDash
} from '../../src/lib/engine/quantity/kinds.ts';
import { kindAt } from '../../src/lib/engine/solver/kind-at.ts';
import type { Page } from 'playwright-core';
import type { Task } from '../../src/lib/engine/tasks/task.ts';
import { taskFromNumber } from '../../src/lib/engine/tasks/task.ts';
import { textAt } from '../../src/lib/engine/solver/show.ts';

/** The task that is open, from the number in the address. */
export async function openTask(page: Page): Promise<Task> {
	await page.waitForURL(/[?&]task=/);
	await page.locator('#question').waitFor();
	return taskFromNumber(new URL(page.url()).searchParams.get('task') ?? '');
}

/** The right answers of a task as somebody would type them, by step key. */
export function rightAnswers({ method, drawn, right }: Task): Record<string, string> {
	return Object.fromEntries(
		drawn.asked.map((key) => {
			const text = textAt(method, key, right[key] ?? '');
			return [key, text.replaceAll(', ', '; ').replace(/ \([^)]*\)$/, '')];
		})
	);
}

/** Kinds of whole numbers. */
export const wholeKinds: ReadonlySet<unknown> = new Set([
	count,
	diameterDash,
	headNumber,
	lengthDash
]);

/** Answers that nothing explains and no task has. */
export function wrongAnswers({ method, drawn, right }: Task): Record<string, string> {
	return Object.fromEntries(
		drawn.asked.map((key) => {
			const choices = kindAt(method, key).choices;
			const other = choices.find((choice) => choice !== right[key]);
			if (other !== undefined) return [key, other];
			if (typeof right[key] === 'string') return [key, 'MS20470A9-99'];
			return [key, wholeKinds.has(kindAt(method, key)) ? '977' : '97.7'];
		})
	);
}

/** Answers are wanted to the whole task, also where it is talked through after one shown worked. */
export async function askWhole(page: Page): Promise<void> {
	// What talks it through comes a moment after the words above the question that say so.
	const talked = page.locator('.topic', { hasText: 'step by step' });
	if ((await talked.count()) === 0) return;
	// “Back to the whole task” stands before it.
	await tabTo(page, 'button:has(+ [data-next])');
	await page.keyboard.press('Enter');
}

/** The task that is open, asked whole; where that is one shown worked, the one after it. */
export async function openWhole(page: Page): Promise<Task> {
	const task = await openTask(page);
	const next = page.locator('[data-next]');
	const isShown = /^\s*Now /.test((await next.textContent()) ?? '');
	if (!isShown) {
		await askWhole(page);
		return task;
	}
	await next.click();
	await page.waitForURL((url) => url.searchParams.get('task') !== task.number);
	return openWhole(page);
}

/**
 * Tabs on until the focus is where it is wanted. On the way each place of the focus is seen, nothing
 * covers it, and it changes nothing.
 */
export async function tabTo(page: Page, selector: string): Promise<void> {
	await page.locator('html:not([data-asleep])').waitFor();
	await page.locator(selector).first().waitFor({ state: 'attached' });
	const before = page.url();
	for (let presses = 0; presses < 60; presses++) {
		const { there, fault } = await page.evaluate(atFocus, selector);
		if (fault !== null) throw new Error(fault);
		if (there) return;
		await page.keyboard.press('Tab');
		if (page.url() !== before) throw new Error('a focus by itself leads to another page');
	}
	throw new Error(`the keyboard does not reach ${selector}`);
}

/** Runs in the page: whether the focus is where it is wanted, and what hides where it is. */
function atFocus(wanted: string): { there: boolean; fault: string | null } {
	const at = document.activeElement;
	if (!at || at === document.body) return { there: false, fault: null };
	const there = at.matches(wanted);
	// A heading has the focus only so that it is read out, and so has the page itself.
	if (at.matches('[tabindex="-1"]')) return { there, fault: null };
	const name = at.outerHTML.slice(0, 120);
	// A field may be hidden behind the label that stands for it.
	const faces = [at, at.nextElementSibling, at.closest('label'), at.parentElement];
	const isLined = (face: Element) => {
		const { outlineStyle, outlineWidth } = getComputedStyle(face);
		return outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2;
	};
	if (!faces.some((face) => face && isLined(face))) {
		return { there, fault: `nothing shows that the focus is on ${name}` };
	}
	const face = at.closest('label') ?? at;
	const { left, right, top, bottom } = face.getBoundingClientRect();
	// After a verdict the way on has the focus, and the verdict is what is scrolled to.
	if (bottom > innerHeight || top < 0) return { there, fault: null };
	const isOpen = [0.1, 0.5, 0.9].some((part) => {
		const x = left + (right - left) * part;
		const found = document.elementFromPoint(x, (top + bottom) / 2);
		return found && (face.contains(found) || found.contains(face));
	});
	return { there, fault: isOpen ? null : `something covers the focus on ${name}` };
}

/** Fills in a task by keyboard, beginning at its heading, and checks it with Enter. */
export async function answerByKeyboard(page: Page, answers: Readonly<Record<string, string>>) {
	await page.locator('#question').focus();
	for (const [key, answer] of Object.entries(answers)) {
		const choice = `fieldset[data-answer-choice="${key}"] input`;
		if ((await page.locator(choice).count()) > 0) await choose(page, choice, answer);
		else {
			await tabTo(page, `[data-answer="${key}"]`);
			await page.keyboard.press('ControlOrMeta+a');
			await page.keyboard.type(answer);
		}
	}
	await page.keyboard.press('Enter');
}

async function choose(page: Page, selector: string, answer: string): Promise<void> {
	await tabTo(page, selector);
	for (let presses = 0; presses < 8; presses++) {
		const chosen = await page.evaluate(() => {
			const element = document.activeElement;
			return element instanceof HTMLInputElement && element.checked ? element.value : null;
		});
		if (chosen === answer) return;
		await page.keyboard.press(chosen === null ? 'Space' : 'ArrowDown');
	}
	throw new Error(`the keyboard does not choose ${answer}`);
}

/** Why the plan chose the task that is open, as “Why now” tells it. */
export async function whyNow(page: Page): Promise<string> {
	const told = page.getByRole('button', { name: 'Why now' }).locator('+ [popover]');
	return (await told.filter({ hasNotText: 'is being looked up' }).textContent()) ?? '';
}
