import { count } from '../../src/lib/engine/quantity/kinds.ts';
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

/** Answers that nothing explains and no task has. */
export function wrongAnswers({ method, drawn, right }: Task): Record<string, string> {
	return Object.fromEntries(
		drawn.asked.map((key) => {
			const choices = kindAt(method, key).choices;
			const other = choices.find((choice) => choice !== right[key]);
			if (other !== undefined) return [key, other];
			if (typeof right[key] === 'string') return [key, 'MS20470A9-99'];
			return [key, kindAt(method, key) === count ? '977' : '97.7'];
		})
	);
}

/** Answers are wanted to the whole task, also where it is talked through after one shown worked. */
export async function askWhole(page: Page): Promise<void> {
	// What talks it through comes a moment after the words above the question that say so.
	const talked = page.locator('.topic', { hasText: 'step by step' });
	if ((await talked.count()) === 0) return;
	await page.getByRole('button', { name: 'Back to the whole task' }).click();
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

/** Tabs on until the focus is where it is wanted. */
export async function tabTo(page: Page, selector: string): Promise<void> {
	await page.locator(selector).first().waitFor({ state: 'attached' });
	for (let presses = 0; presses < 60; presses++) {
		const there = await page.evaluate(
			(wanted) => document.activeElement?.matches(wanted) ?? false,
			selector
		);
		if (there) return;
		await page.keyboard.press('Tab');
	}
	throw new Error(`the keyboard does not reach ${selector}`);
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
